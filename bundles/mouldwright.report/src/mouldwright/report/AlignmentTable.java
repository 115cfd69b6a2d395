package mouldwright.report;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import mouldwright.plan.Alignment;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.FeetInchesEighths;

/** What the plates are set up by: offsets, heights and diagonals from two points on the base, and how a survey found them. */
final class AlignmentTable implements StageTable {

    @Override
    public String stage() {
        return "frame";
    }

    @Override
    public void print(Estimate estimate, Display display, Section out) {
        Optional<Alignment> alignment = estimate.alignment();
        if (alignment.isEmpty()) {
            return;
        }
        Alignment sheet = alignment.get();
        Length all = new Length(display, sheet);
        out.lead("Setting up, to " + display.format(sheet.tolerance(), Dimension.LENGTH) + ": datum points on the base at the line of the first plate, "
                + all.of(sheet.half()) + " " + all.unit() + " off the centreline; that line is square where " + all.of(sheet.square().across()) + " along it and "
                + all.of(sheet.square().along()) + " along the centreline are " + all.of(sheet.square().diagonal()) + " " + all.unit() + " apart");
        for (Alignment.Hole hole : sheet.holes()) {
            out.lead("Hole of " + display.format(hole.diameter(), Dimension.LENGTH) + " to line them up, " + all.of(Math.abs(hole.y())) + " "
                    + (hole.y() < 0 ? "to port" : "to starboard") + " and " + all.of(hole.z()) + " above base"
                    + (hole.without().isEmpty() ? "" : "; no room for it in " + String.join(", ", hole.without())));
        }
        Table table = new Table("alignment", "Setting up").words("plate").figures("aft of first", all.unit()).figures("height line", all.unit()).figures("port", all.unit())
                .figures("starboard", all.unit()).figures("to port", all.unit()).figures("to starboard", all.unit()).figures("top", all.unit());
        for (Alignment.Row row : sheet.rows()) {
            table.row(Cell.of(row.station()), all.cell(row.offset()), all.cell(row.height()), all.cell(row.port()), all.cell(row.starboard()),
                    all.cell(row.toPort()), all.cell(row.toStarboard()), all.cell(row.top()));
        }
        out.table(table);
        for (Alignment.Row row : sheet.rows()) {
            row.reading().ifPresent(reading -> out.note(row.station() + " as last read: " + words(reading, display)));
        }
    }

    private static String words(Alignment.Reading reading, Display display) {
        String lean = reading.leans() == 0 ? "" : "leans " + display.format(Math.abs(reading.leans()), Dimension.LENGTH) + (reading.leans() > 0 ? " aft" : " forward");
        String high = reading.high() == 0 ? "" : display.format(Math.abs(reading.high()), Dimension.LENGTH) + (reading.high() > 0 ? " high" : " low");
        String both = lean.isEmpty() || high.isEmpty() ? lean + high : lean + ", " + high;
        return (both.isEmpty() ? "true" : both) + (reading.within() ? ", within tolerance" : ", out of tolerance");
    }

    /** Lengths that are set off with a rule: to the half millimetre or the sixteenth, whatever their size. */
    record Length(boolean metric) {
        Length(Display display, Alignment sheet) {
            this(display.unitFor(sheet.half(), Dimension.LENGTH).map(unit -> unit.symbol().equals("mm") || unit.symbol().equals("m")).orElse(true));
        }

        String unit() {
            return metric ? "mm" : "ft-in-8ths";
        }

        Cell cell(double metres) {
            return metric ? new Cell.Number(metres * 1000, 1, of(metres)) : Cell.of(of(metres));
        }

        String of(double metres) {
            return metric ? Numbers.fixed(metres * 1000, 1) : FeetInchesEighths.of(metres);
        }
    }
}
