package mouldwright.report;

import java.util.List;
import mouldwright.plan.stage.MouldMeasures;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** The parting boards: how long each is and whether it can be cut from a flat sheet. */
final class BoardTable implements StageTable {

    /** A board of some millimetres gives way so far without a word, m; common practice. */
    private static final double SPRUNG = 1e-3;

    @Override
    public String stage() {
        return "mould";
    }

    @Override
    public void print(Estimate estimate, Display display, Section out) {
        List<MouldMeasures.Board> boards = estimate.plan().measurements().find(MouldMeasures.class).map(MouldMeasures::boards).orElse(List.of());
        Figure length = new Figure(display, boards.stream().mapToDouble(board -> board.strip().length()).max().orElse(0), Dimension.LENGTH);
        Figure off = new Figure(display, boards.stream().mapToDouble(board -> board.strip().standOff()).max().orElse(0), Dimension.LENGTH);
        Table table = new Table("boards", "Parting boards").words("parting board").words("side").figures("line", length.unit()).figures("flange", length.unit())
                .figures("off plane", off.unit()).words("cut from");
        for (MouldMeasures.Board board : boards) {
            table.row(Cell.of(board.part().name().map(name -> "half " + name).orElse("")), Cell.of(board.port() ? "port" : "starboard"), length.cell(board.strip().length()),
                    length.cell(board.strip().width()), off.cell(board.strip().standOff()), Cell.of(from(board)));
        }
        out.table(table);
    }

    private static String from(MouldMeasures.Board board) {
        if (board.strip().crowded())
            return "strips, for the line bends closer than the flange is wide";
        return board.strip().standOff() <= SPRUNG ? "a flat sheet" : "a sheet that bends, by the outline laid out flat";
    }
}
