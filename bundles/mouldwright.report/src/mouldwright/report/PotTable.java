package mouldwright.report;

import java.util.List;
import java.util.function.ToDoubleFunction;
import mouldwright.plan.PotEntry;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** The pots of resin each ply of a laminate is wetted from. The first pot of a job is a small one, until the cure is known. */
final class PotTable implements StageTable {

    private final String laminate;

    /** @param laminate whose pots; its name begins with the stage it belongs to */
    PotTable(String laminate) {
        this.laminate = laminate;
    }

    @Override
    public String stage() {
        return laminate.contains(".") ? laminate.substring(0, laminate.indexOf('.')) : laminate;
    }

    @Override
    public void print(Estimate estimate, Display display, Section out) {
        List<PotEntry> pots = estimate.pots().stream().filter(entry -> entry.laminate().equals(laminate)).toList();
        Figure pot = figure(display, pots, entry -> Math.max(entry.first().resin(), entry.further().resin()), Dimension.MASS);
        Figure catalyst = figure(display, pots, entry -> Math.max(entry.first().catalyst(), entry.further().catalyst()), Dimension.MASS);
        Figure measure = figure(display, pots, entry -> Math.max(entry.first().catalystVolume(), entry.further().catalystVolume()), Dimension.VOLUME);
        Figure time = figure(display, pots, PotEntry::gel, Dimension.TIME);
        Table table = new Table("pots " + laminate, "Pots of resin").figures("ply").words("mat").words("pots").figures("resin", pot.unit()).figures("catalyst", catalyst.unit())
                .figures("measure", measure.unit()).figures("gel", time.unit()).figures("lay in", time.unit());
        for (PotEntry entry : pots) {
            table.row(Cell.of(entry.ply()), Cell.of(entry.mat()), Cell.of("first"), pot.cell(entry.first().resin()), catalyst.cell(entry.first().catalyst()),
                    measure.cell(entry.first().catalystVolume()), time.cell(entry.gel()), time.cell(entry.working()));
            if (entry.pots() > 1)
                table.row(Cell.NONE, Cell.NONE, Cell.of(entry.pots() == 2 ? "second" : (entry.pots() - 1) + " more, each"), pot.cell(entry.further().resin()),
                        catalyst.cell(entry.further().catalyst()), measure.cell(entry.further().catalystVolume()), time.cell(entry.gel()), time.cell(entry.working()));
        }
        out.table(table);
    }

    private static Figure figure(Display display, List<PotEntry> pots, ToDoubleFunction<PotEntry> of, Dimension dimension) {
        return new Figure(display, pots.stream().mapToDouble(of).max().orElse(0), dimension);
    }
}
