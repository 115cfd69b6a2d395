package mouldwright.report;

import java.util.List;
import java.util.function.ToDoubleFunction;
import mouldwright.plan.PotEntry;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** The pots of resin each ply of the skin is wetted from. The first pot of a job is a small one, until the cure is known. */
final class PotTable implements TextReport.StageTable {

    @Override
    public String stage() {
        return "skin";
    }

    @Override
    public void print(Estimate estimate, Display display, StringBuilder out) {
        List<PotEntry> pots = estimate.pots();
        Figure resin = figure(display, pots, PotEntry::resin, Dimension.MASS);
        Figure pot = figure(display, pots, PotEntry::each, Dimension.MASS);
        Figure catalyst = figure(display, pots, PotEntry::catalyst, Dimension.MASS);
        Figure measure = figure(display, pots, PotEntry::catalystVolume, Dimension.VOLUME);
        Figure time = figure(display, pots, PotEntry::gel, Dimension.TIME);
        Table table = new Table().figures("ply").words("mat").figures("resin", resin.unit()).figures("pots").figures("first", pot.unit())
                .figures("each", pot.unit()).figures("catalyst", catalyst.unit()).figures("measure", measure.unit()).figures("gel", time.unit())
                .figures("lay in", time.unit());
        for (PotEntry entry : pots) {
            table.row(List.of(String.valueOf(entry.ply()), entry.mat(), resin.of(entry.resin()), String.valueOf(entry.pots()),
                    pot.of(entry.first()), pot.of(entry.each()), catalyst.of(entry.catalyst()), measure.of(entry.catalystVolume()),
                    time.of(entry.gel()), time.of(entry.working())));
        }
        table.print("  ", out);
    }

    private static Figure figure(Display display, List<PotEntry> pots, ToDoubleFunction<PotEntry> of, Dimension dimension) {
        return new Figure(display, pots.stream().mapToDouble(of).max().orElse(0), dimension);
    }
}
