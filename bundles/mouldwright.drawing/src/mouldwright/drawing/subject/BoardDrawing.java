package mouldwright.drawing.subject;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import mouldwright.drawing.Draughtsman;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Lettering;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Path;
import mouldwright.drawing.Pen;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.drawing.Tone;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Hazard;

/** All parting boards of a mould on one paper, laid out flat to one scale, with the stations they pass. */
final class BoardDrawing {

    private static final double WIDTH = 267;
    private static final double ROOM = 245;
    private static final double HEIGHT = 400;
    private static final double LETTERS = 2.6;
    private static final double GAP = 9;
    private static final double ROWS = 3.8;
    private static final Pen AGAINST = Pen.full(Tone.SURFACE, 0.6);
    private static final Pen FREE = Pen.full(Tone.WOOD, 0.3);
    private static final Mark.Fill BOARD = new Mark.Fill.Even(Tone.WOOD, 0.18);

    private final Draughtsman board = new Draughtsman();
    private final Labels labels = new Labels(board);

    private BoardDrawing() { }

    /** The boards of a plan's mould; nothing where it has none. @param code of plug and revision */
    static Optional<Drawing> of(BuildPlan plan, String code) {
        List<LevelBoard> full = BoardTemplate.boards(plan, new Scale(1));
        return full.isEmpty() ? Optional.empty() : Optional.of(new BoardDrawing().draw(plan, full, code));
    }

    private Drawing draw(BuildPlan plan, List<LevelBoard> full, String code) {
        double wide = full.stream().mapToDouble(one -> one.extent().width()).max().orElse(1), high = full.stream().mapToDouble(one -> one.extent().height()).sum();
        Scale scale = Scale.fitting(wide / 1000, high / 1000, ROOM, HEIGHT);
        double y = 0;
        for (LevelBoard one : BoardTemplate.boards(plan, scale))
            y = draw(one, y) - GAP;
        Legend legend = new Legend().line(AGAINST, "parting line: this edge stands against the plug").area(BOARD, FREE, "board, as broad as the flange, laid out flat")
                .line(Role.FAINT.pen(), "where it passes a station")
                .note("The flange laid up on these boards is the pattern for the flange of the other half. Boards over an end face fill the corner to the next board.")
                .note("`templates` draws each at full size.").note(Hazard.DEFERENCE);
        return SheetFrame.around(board, legend, "Parting boards of " + plan.plug(), "laid out flat, the line level from end to end; scale " + scale.words(), code, WIDTH,
                board.extent().orElseThrow()).finish(full.size() + (full.size() == 1 ? " parting board" : " parting boards") + " laid out flat: " + String.join("; ", full.stream().map(LevelBoard::figures).toList()));
    }

    /** Draws one below the last. @return how far down it reaches */
    private double draw(LevelBoard one, double top) {
        board.about("board." + one.number());
        Extent box = one.extent();
        double words = top - LETTERS, labelled = words - 2 - (one.board().marks().isEmpty() ? 0 : 2 * ROWS);
        board.words(Lettering.fitted(one.title() + ": " + one.figures(), LETTERS, WIDTH - 15), new Spot(0, words), LETTERS, Mark.Anchor.START);
        LevelBoard placed = one.at(one.zero().plus(-box.left(), labelled - box.top()));
        board.draw(Role.AREA, new Mark.Area(List.of(placed.outline()), BOARD));
        board.draw(Role.OUTLINE, new Mark.Line(placed.outline(), FREE));
        board.draw(Role.SURFACE, new Mark.Line(Path.through(placed.spots(one.board().strip().line()), false), AGAINST));
        one.board().marks().forEach(mark -> {
            Spot line = placed.spot(mark.rung().line()), edge = placed.spot(mark.rung().edge());
            board.line(Role.FAINT, line, edge);
            double x = (line.y() > edge.y() ? line : edge).x();
            labels.place(Stream.of(0, 1).map(row -> (Supplier<Mark.Words>) () -> new Mark.Words(mark.station(), new Spot(x, labelled + 1.2 + row * ROWS), Legend.LETTERS, Mark.Anchor.MIDDLE, 0, Tone.INK)));
        });
        board.about("");
        return labelled - box.height();
    }
}
