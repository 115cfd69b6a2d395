package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.LENGTH;

import java.util.List;
import mouldwright.plan.ledger.Ledger;

/** Writes figures of the parting boards a mould is laid up against, half by half. */
final class BoardWriting {

    private static final String HOW = "strip between parting line and flange edge, square to the pull, laid out flat field by field";

    private BoardWriting() { }

    static void write(List<MouldMeasures.Board> boards, Ledger ledger) {
        if (boards.isEmpty())
            return;
        ledger.quantity("mould.board.area", "Parting boards, face", AREA)
                .measured(Places.exact(boards.stream().mapToDouble(board -> board.strip().area()).sum(), HOW));
        ledger.quantity("mould.board.standoff", "Parting boards, farthest from a plane", LENGTH)
                .measured(Places.exact(boards.stream().mapToDouble(board -> board.strip().standOff()).max().orElse(0),
                        "largest distance of a line and its flange edge from the plane that fits them best"));
    }
}
