package mouldwright.exchange;

import java.util.ArrayList;
import java.util.List;

/** Where an outline that was read, and not marked by hand, has a corner. Limits are our own choice. */
public final class Corners {

    /** Edges of a polyline that turn this much meet at a corner, radians: 20 degrees. A smooth curve is drawn with more points than that. */
    public static final double BETWEEN_EDGES = Math.toRadians(20);

    /** Arcs and splines that turn this much meet at a corner, radians: 5 degrees. They are drawn tangent where they are meant to be. */
    public static final double BETWEEN_CURVES = Math.toRadians(5);

    /** A smooth line through the points of a polyline may stand off its edges by this, metres; more would be another shape. */
    private static final double STAND_OFF = 2e-3;

    private Corners() { }

    /** Whether two straight edges meet at a corner.
     *  @param turn    radians
     *  @param shorter of the two, metres; an arc through both ends that turns so much stands off by an eighth of the two multiplied */
    public static boolean betweenChords(double turn, double shorter) {
        return turn >= BETWEEN_EDGES || turn * shorter / 8 > STAND_OFF;
    }

    /** Whether an outline meets its mirror image at a corner. @param rise from the level, radians, 0 to pi @param least turn of one */
    public static boolean atCentreline(double rise, double least) {
        return 2 * Math.min(rise, Math.PI - rise) >= least;
    }

    /** Marks the first point of offsets, and the last, as corners where they lie on the centreline and the outline meets its mirror image
     *  there at one, as a parabola through the three nearest points does. */
    public static List<SectionPoint> markedAtCentreline(List<SectionPoint> points) {
        if (points.size() < 2)
            return points;
        List<SectionPoint> marked = new ArrayList<>(points);
        if (points.getFirst().y() == 0 && atCentreline(rise(points), BETWEEN_EDGES))
            marked.set(0, corner(points.getFirst()));
        if (points.getLast().y() == 0 && atCentreline(rise(points.reversed()), BETWEEN_EDGES))
            marked.set(points.size() - 1, corner(points.getLast()));
        return marked;
    }

    private static SectionPoint corner(SectionPoint point) {
        return new SectionPoint(point.y(), point.z(), true, point.line());
    }

    /** Angle from the level at the first point, radians. */
    private static double rise(List<SectionPoint> points) {
        SectionPoint a = points.get(0), b = points.get(1), c = points.get(Math.min(2, points.size() - 1));
        double first = a.distance(b), second = b.distance(c);
        if (second == 0 || b.knuckle())
            return Math.abs(Math.atan2(b.z() - a.z(), b.y() - a.y()));
        double dy = slope(a.y(), b.y(), c.y(), first, second), dz = slope(a.z(), b.z(), c.z(), first, second);
        return Math.abs(Math.atan2(dz, dy));
    }

    /** Of a parabola at its first value, by chord length. */
    private static double slope(double a, double b, double c, double first, double second) {
        double one = (b - a) / first, two = (c - b) / second;
        return one - first * (two - one) / (first + second);
    }
}
