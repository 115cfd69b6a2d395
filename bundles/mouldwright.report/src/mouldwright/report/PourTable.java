package mouldwright.report;

import java.util.List;
import java.util.function.ToDoubleFunction;
import mouldwright.plan.PourEntry;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** The pours: what to mix for each lift of each bay. */
final class PourTable implements TextReport.StageTable {

    @Override
    public String stage() {
        return "fill";
    }

    @Override
    public void print(Estimate estimate, Display display, StringBuilder out) {
        List<PourEntry> pours = estimate.pours();
        Figure volume = figure(display, pours, PourEntry::volume, Dimension.VOLUME);
        Figure liquid = figure(display, pours, PourEntry::liquid, Dimension.VOLUME);
        Figure mass = figure(display, pours, PourEntry::mass, Dimension.MASS);
        Table table = new Table().words("pour into bay").figures("lift").figures("risen", volume.unit()).figures("liquid", liquid.unit())
                .figures("A + B", mass.unit()).figures("A", mass.unit()).figures("B", mass.unit()).figures("pots");
        for (PourEntry pour : pours) {
            table.row(List.of(pour.bay(), String.valueOf(pour.lift()), volume.of(pour.volume()), liquid.of(pour.liquid()),
                    mass.of(pour.mass()), mass.of(pour.a()), mass.of(pour.b()), String.valueOf(pour.pots())));
        }
        table.print("  ", out);
    }

    private static Figure figure(Display display, List<PourEntry> pours, ToDoubleFunction<PourEntry> of, Dimension dimension) {
        return new Figure(display, pours.stream().mapToDouble(of).max().orElse(0), dimension);
    }
}
