package mouldwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Distances with their figures, as ISO 129-1 has them: extension lines, a line between, strokes at its ends, the figure above it. */
final class Dimensions {

    private static final double GAP = 1;
    private static final double PAST = 1.5;

    private Dimensions() { }

    /** @param side mm to the left of the way from a to b */
    static List<Mark> aligned(Spot a, Spot b, double side, String words, double height) {
        double length = a.distance(b);
        if (length == 0)
            return List.of();
        double ux = (b.x() - a.x()) / length, uy = (b.y() - a.y()) / length, sign = Math.signum(side == 0 ? 1 : side);
        Pen pen = Role.DIMENSION.pen();
        List<Mark> marks = new ArrayList<>();
        Spot from = a.plus(-uy * side, ux * side), to = b.plus(-uy * side, ux * side);
        if (Math.abs(side) > GAP)
            for (Spot[] one : new Spot[][] {{a, from}, {b, to}})
                marks.add(new Mark.Line(Path.line(one[0].plus(-uy * GAP * sign, ux * GAP * sign), one[1].plus(-uy * PAST * sign, ux * PAST * sign)), pen));
        marks.add(new Mark.Line(Path.line(from, to), pen));
        double tick = Math.min(2, length / 4);
        for (Spot end : List.of(from, to))
            marks.add(new Mark.Line(Path.line(end.plus(-(ux - uy) * tick / 2, -(uy + ux) * tick / 2), end.plus((ux - uy) * tick / 2, (uy + ux) * tick / 2)), pen));
        double angle = Math.toDegrees(Math.atan2(uy, ux));
        boolean upsideDown = angle > 90.0001 || angle <= -89.9999;
        double lift = upsideDown ? -0.6 * height : 0.6 * height;
        Spot middle = from.toward(to, 0.5).plus(-uy * lift, ux * lift);
        marks.add(new Mark.Words(words, middle, height, Mark.Anchor.MIDDLE, upsideDown ? angle + 180 : angle, Tone.SOFT));
        return marks;
    }
}
