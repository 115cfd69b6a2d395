package mouldwright.report;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.plan.PlateEntry;
import mouldwright.plan.Quantity;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** The plates: which way they stand, how large a piece of sheet they take, and the gap a square edge leaves. */
final class PlateTable implements StageTable {

    @Override
    public String stage() {
        return "frame";
    }

    @Override
    public void print(Estimate estimate, Display display, Section out) {
        List<PlateEntry> plates = estimate.plates();
        Figure thickness = length(display, plates, PlateEntry::thickness);
        Figure breadth = length(display, plates, PlateTable::breadth);
        Figure height = length(display, plates, PlateTable::height);
        Figure gap = length(display, plates, PlateEntry::gap);
        Figure mass = new Figure(display, plates.stream().flatMap(p -> mass(estimate, p).stream()).mapToDouble(Quantity::value).max().orElse(0),
                Dimension.MASS);
        Table table = new Table("plates", "Plates").words("plate").words("stands").figures("thickness", thickness.unit()).figures("breadth", breadth.unit())
                .figures("height", height.unit()).figures("gap", gap.unit()).figures("mass", mass.unit());
        for (PlateEntry plate : plates) {
            table.row(Cell.of(plate.station()), Cell.of(plate.stands()), thickness.cell(plate.thickness()), breadth.cell(breadth(plate)),
                    height.cell(height(plate)), gap.cell(plate.gap()), mass(estimate, plate).map(m -> mass.cell(m.value())).orElse(Cell.of("-")));
        }
        out.table(table);
    }

    private static Figure length(Display display, List<PlateEntry> plates, ToDoubleFunction<PlateEntry> of) {
        return new Figure(display, plates.stream().mapToDouble(of).max().orElse(0), Dimension.LENGTH);
    }

    private static Optional<Quantity> mass(Estimate estimate, PlateEntry plate) {
        String id = "station." + plate.station() + ".plate.mass";
        return estimate.quantities().stream().filter(quantity -> quantity.id().equals(id)).findFirst();
    }

    private static double breadth(PlateEntry plate) {
        return extent(plate, PlanePoint::y);
    }

    private static double height(PlateEntry plate) {
        return extent(plate, PlanePoint::z);
    }

    private static double extent(PlateEntry plate, ToDoubleFunction<PlanePoint> along) {
        double low = plate.outline().stream().mapToDouble(along).min().orElse(0);
        return plate.outline().stream().mapToDouble(along).max().orElse(0) - low;
    }
}
