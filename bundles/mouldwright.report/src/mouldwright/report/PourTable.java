package mouldwright.report;

import java.util.List;
import java.util.function.ToDoubleFunction;
import mouldwright.plan.PourEntry;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** The pours: what to mix for each lift of each bay. */
final class PourTable implements StageTable {

    @Override
    public String stage() {
        return "fill";
    }

    @Override
    public void print(Estimate estimate, Display display, Section out) {
        List<PourEntry> pours = estimate.pours();
        Figure volume = figure(display, pours, PourEntry::volume, Dimension.VOLUME);
        Figure liquid = figure(display, pours, PourEntry::liquid, Dimension.VOLUME);
        Figure mass = figure(display, pours, PourEntry::mass, Dimension.MASS);
        Table table = new Table("pours", "Pours").words("pour into bay").figures("lift").figures("risen", volume.unit()).figures("liquid", liquid.unit())
                .figures("A + B", mass.unit()).figures("A", mass.unit()).figures("B", mass.unit()).figures("pots");
        for (PourEntry pour : pours) {
            table.row(Cell.of(pour.bay()), Cell.of(pour.lift()), volume.cell(pour.volume()), liquid.cell(pour.liquid()),
                    mass.cell(pour.mass()), mass.cell(pour.a()), mass.cell(pour.b()), Cell.of(pour.pots()));
        }
        out.table(table);
    }

    private static Figure figure(Display display, List<PourEntry> pours, ToDoubleFunction<PourEntry> of, Dimension dimension) {
        return new Figure(display, pours.stream().mapToDouble(of).max().orElse(0), dimension);
    }
}
