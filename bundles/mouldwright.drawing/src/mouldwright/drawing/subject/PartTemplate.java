package mouldwright.drawing.subject;

import java.util.List;
import java.util.Locale;
import mouldwright.drawing.Draughtsman;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Path;
import mouldwright.drawing.Pen;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.drawing.Tone;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;

/** A part at full size, to be cut by: cut lines, scores, marks and words, each on its layer. */
public final class PartTemplate {

    private static final double MM = 1000;
    private static final double MARGIN = 15;
    private static final double SMALL = 3;

    private PartTemplate() { }

    /** Draws a part. @param code of plug and revision, written beside it */
    public static Drawing of(PlatePart part, String code) {
        Draughtsman board = new Draughtsman().about(part.key());
        draw(board, part);
        Extent box = board.extent().orElseThrow();
        board.words(title(part) + "   " + code, new Spot(box.left(), box.bottom() - 8), 4, Mark.Anchor.START);
        return board.finish(title(part), description(part), MARGIN);
    }

    /** Draws a part into a larger drawing, such as a sheet it is nested on. */
    static void draw(Draughtsman board, PlatePart part) {
        board.path(Role.CUT, ring(part.outer()));
        part.openings().forEach(opening -> board.path(Role.CUT, ring(opening.ring())));
        part.bores().forEach(bore -> bore(board, bore));
        part.scores().forEach(score -> score(board, score));
        part.marks().forEach(mark -> line(board, mark));
        part.bevels().forEach(bevel -> bevel(board, part, bevel));
        part.notes().forEach(note -> board.draw(Role.TEXT,
                new Mark.Words(note.words(), spot(note.at()), note.height() * MM, Mark.Anchor.MIDDLE, Math.toDegrees(note.angle()), Tone.INK)));
    }

    private static void bore(Draughtsman board, PlatePart.Bore bore) {
        Spot at = spot(bore.centre());
        double radius = bore.diameter() * MM / 2;
        board.circle(Role.CUT, at, radius);
        board.line(Role.MARK, at.plus(-radius - 4, 0), at.plus(radius + 4, 0)).line(Role.MARK, at.plus(0, -radius - 4), at.plus(0, radius + 4));
        board.words(bore.label(), at.plus(radius + 2, radius + 2), SMALL, Mark.Anchor.START);
    }

    private static void score(Draughtsman board, PlatePart.Score score) {
        List<Spot> spots = score.points().stream().map(PartTemplate::spot).toList();
        if (spots.size() < 2)
            return;
        Pen pen = score.use() == PlatePart.Score.Use.CENTRELINE || score.use() == PlatePart.Score.Use.HEIGHT ? Pen.chain(Tone.SCORE, 0.25) : Role.SCORE.pen();
        board.draw(Role.SCORE, new Mark.Line(Path.through(spots, score.closed()), pen));
        if (!score.label().isEmpty())
            board.words(score.label(), spots.getFirst().plus(2, 1.5), SMALL, Mark.Anchor.START);
    }

    private static void line(Draughtsman board, PlatePart.LineMark mark) {
        Spot at = spot(mark.at()), inward = spot(mark.inward());
        board.line(Role.MARK, at, inward);
        Mark.Anchor anchor = inward.x() >= at.x() ? Mark.Anchor.START : Mark.Anchor.END;
        board.words(mark.line(), inward.plus(anchor == Mark.Anchor.START ? 1.5 : -1.5, -1), SMALL, anchor);
    }

    /** The angle, written inside the edge where it holds. */
    private static void bevel(Draughtsman board, PlatePart part, PlatePart.BevelMark bevel) {
        PlanePoint middle = part.outer().centroid();
        Spot at = spot(bevel.at()), in = spot(middle);
        double way = at.distance(in);
        if (way == 0)
            return;
        Spot end = at.toward(in, Math.min(1, 6 / way)), words = at.toward(in, Math.min(1, 8 / way));
        board.line(Role.MARK, at, end);
        board.words(String.format(Locale.ROOT, "%.1f\u00b0", Math.toDegrees(bevel.angle())), words, 2.5, in.x() >= at.x() ? Mark.Anchor.START : Mark.Anchor.END);
    }

    private static String title(PlatePart part) {
        String kind = switch (part.kind()) {
            case PLATE -> "Plate ";
            case BACKBONE -> "Backbone ";
            case STRAP -> "Strap ";
            case BASE -> "Base ";
            case GAUGE -> "Gauge ";
        };
        return kind + part.name();
    }

    private static String description(PlatePart part) {
        Outline outer = part.outer();
        return String.format(Locale.ROOT, "%s, %.0f by %.0f mm, of %s %.1f mm thick, %d to be cut, with %d openings and %d holes", title(part), (outer.maxY() - outer.minY()) * MM,
                (outer.maxZ() - outer.minZ()) * MM, part.sheet(), part.thickness() * MM, part.quantity(), part.openings().size(), part.bores().size());
    }

    static Path ring(Outline ring) {
        return Path.through(ring.points().stream().map(PartTemplate::spot).toList(), true);
    }

    static Spot spot(PlanePoint point) {
        return new Spot(point.y() * MM, point.z() * MM);
    }
}
