package mouldwright.drawing.subject;

import java.util.List;
import mouldwright.drawing.Draughtsman;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Path;
import mouldwright.drawing.Pen;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.drawing.Tone;

/**
 * Colours bays by how far their surface stands off a board: blue where it lies hollow, sand where it stands proud, the more the deeper.
 *
 * @param most the crown drawn in the full colour, metres, positive
 */
record CrownTint(double most) {

    private static final int STEPS = 4;
    private static final double SWATCH = 11;
    private static final double FULL = 0.75;

    /** With steps of whole tenths of a millimetre, or of hundredths where crowns are small. @param crown largest, metres */
    static CrownTint upTo(double crown) {
        double step = STEPS * (crown < 4e-4 ? 1e-5 : 1e-4);
        return new CrownTint(Math.max(step, Math.ceil(crown / step - 1e-9) * step));
    }

    /** @param crown metres, + proud */
    Mark.Fill of(double crown) {
        return new Mark.Fill.Even(crown < 0 ? Tone.LOW : Tone.HIGH, FULL * Math.min(1, Math.abs(crown) / most));
    }

    /** Draws what the colours mean. @return mm across */
    double legend(Draughtsman board, Spot corner, String limit) {
        board.words("crown of a bay, mm: hollow, proud of a board", corner.plus(0, 8.5), Legend.LETTERS, Mark.Anchor.START);
        for (int i = -STEPS; i <= STEPS; i++) {
            double crown = most * i / STEPS, left = corner.x() + (i + STEPS) * SWATCH;
            Path box = Path.box(new Extent(left, corner.y() + 3.5, left + SWATCH, corner.y() + 7));
            board.draw(Role.SHEET, new Mark.Area(List.of(box), of(crown)));
            board.draw(Role.SHEET, new Mark.Line(box, Pen.full(Tone.SOFT, 0.13)));
            board.words((i > 0 ? "+" : "") + Said.figure(crown * 1000, most < 4e-4 ? 2 : 1), new Spot(left + SWATCH / 2, corner.y()), 2.2, Mark.Anchor.MIDDLE);
        }
        board.draw(Role.TEXT, new Mark.Words(limit, corner.plus(0, -4), Legend.LETTERS, Mark.Anchor.START, 0, Tone.SOFT));
        return (2 * STEPS + 1) * SWATCH;
    }
}
