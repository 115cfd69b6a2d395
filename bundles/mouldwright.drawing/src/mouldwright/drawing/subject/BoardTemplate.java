package mouldwright.drawing.subject;

import java.util.ArrayList;
import java.util.List;
import mouldwright.drawing.Draughtsman;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.FileFormat.NamedDrawing;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Path;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.drawing.Tone;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.stage.MouldMeasures;

/** A parting board at full size, laid out flat, to be cut by: the edge against the plug, the flange edge, and where the stations are. */
public final class BoardTemplate {

    private static final Scale FULL = new Scale(1);
    private static final double MARGIN = 15;
    private static final double SMALL = 3;
    private static final double TITLE = 4;

    private BoardTemplate() { }

    /** The boards of a plan's mould, named by their number; none where it has one piece. @param code of plug and revision, written beside each */
    public static List<NamedDrawing> of(BuildPlan plan, String code) {
        List<NamedDrawing> drawings = new ArrayList<>();
        for (LevelBoard board : boards(plan, FULL))
            drawings.add(new NamedDrawing("board." + board.number(), draw(board, code)));
        return drawings;
    }

    /** The boards of a plan's mould in their order, all beginning at the same spot. */
    static List<LevelBoard> boards(BuildPlan plan, Scale scale) {
        List<LevelBoard> boards = new ArrayList<>();
        plan.measurements().find(MouldMeasures.class).ifPresent(mould -> mould.boards()
                .forEach(board -> boards.add(new LevelBoard(board, boards.size() + 1, scale, new Spot(0, 0)))));
        return boards;
    }

    private static Drawing draw(LevelBoard board, String code) {
        Draughtsman sheet = new Draughtsman().about("board." + board.number());
        sheet.path(Role.CUT, board.outline());
        sheet.path(Role.SCORE, Path.through(inside(board), false));
        board.board().marks().forEach(mark -> {
            Spot line = board.spot(mark.rung().line()), edge = board.spot(mark.rung().edge());
            sheet.line(Role.MARK, line, edge);
            sheet.draw(Role.TEXT, new Mark.Words(mark.station(), line.toward(edge, 0.5).plus(1.5, 0), SMALL, Mark.Anchor.START, 0, Tone.INK));
        });
        Extent box = sheet.extent().orElseThrow();
        sheet.words(board.title() + "   " + code, new Spot(box.left(), box.bottom() - 8), TITLE, Mark.Anchor.START);
        sheet.words(board.figures() + "; the scored line marks the edge against the plug", new Spot(box.left(), box.bottom() - 14), SMALL, Mark.Anchor.START);
        return sheet.finish(board.title(), board.title() + ", " + board.figures(), MARGIN);
    }

    /** A line a little inside the edge that stands against the plug, so that it is told from the other. */
    private static List<Spot> inside(LevelBoard board) {
        List<Spot> line = board.spots(board.board().strip().line()), inside = new ArrayList<>();
        for (int i = 0; i < line.size(); i++) {
            Spot before = line.get(Math.max(0, i - 1)), after = line.get(Math.min(line.size() - 1, i + 1));
            double run = before.distance(after);
            if (run > 0)
                inside.add(line.get(i).plus(-SMALL * (after.y() - before.y()) / run, SMALL * (after.x() - before.x()) / run));
        }
        return inside;
    }
}
