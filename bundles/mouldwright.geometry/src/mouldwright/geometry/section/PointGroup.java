package mouldwright.geometry.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.curve.ArcCurve;
import mouldwright.geometry.curve.CubicSpline;
import mouldwright.geometry.curve.CurvePart;
import mouldwright.geometry.curve.EndCondition;
import mouldwright.geometry.curve.SplineCurve;

/** The points between two knuckles with the spline through them. The parameter is centripetal (E. T. Y. Lee, Choosing nodal
 *  parameters for curve interpolation, CAD 21, 1989): root of the chord, which keeps uneven points from looping. */
final class PointGroup {
    /** Places looked at between two points for overshoot. */
    private static final int LOOKS = 8;
    /** Power of the chord that makes the parameter. */
    private static final double CENTRIPETAL = 0.5;

    private final List<OutlinePoint> points;
    private final List<Integer> members;
    private final SplineCurve curve;
    private final double[] knots;
    private double from;                                // where the spline begins and ends once its corners are rounded
    private double to;
    private Optional<ArcCurve> before = Optional.empty();
    private Optional<ArcCurve> after = Optional.empty();
    private boolean beforeTurnsLeft;
    private boolean afterTurnsLeft;

    private PointGroup(List<OutlinePoint> points, List<Integer> members, double[] knots, CubicSpline spline) {
        this.points = points;
        this.members = members;
        this.knots = knots;
        this.curve = new SplineCurve(spline);
        from = knots[0];
        to = knots[knots.length - 1];
    }

    /** @param mirroredStart @param mirroredEnd whether the outline continues as its own mirror image there */
    static PointGroup open(List<OutlinePoint> points, List<Integer> members, boolean mirroredStart, boolean mirroredEnd) {
        return open(points, members, mirroredStart, mirroredEnd, CENTRIPETAL);
    }

    /** The same with the chord length itself as parameter, which keeps its pace over the gap of a point left out. */
    static PointGroup openByChord(List<OutlinePoint> points, List<Integer> members, boolean mirroredStart, boolean mirroredEnd) {
        return open(points, members, mirroredStart, mirroredEnd, 1);
    }

    private static PointGroup open(List<OutlinePoint> points, List<Integer> members, boolean mirroredStart, boolean mirroredEnd,
            double power) {
        double[] knots = knots(points, members, power);
        boolean straight = members.size() == 2;
        EndCondition free = EndCondition.NOT_A_KNOT;
        boolean start = mirroredStart && !straight, end = mirroredEnd && !straight;
        CubicSpline y = CubicSpline.through(knots, column(points, members, true), start ? EndCondition.STRAIGHT : free,
                end ? EndCondition.STRAIGHT : free);
        CubicSpline z = CubicSpline.through(knots, column(points, members, false), start ? EndCondition.LEVEL : free,
                end ? EndCondition.LEVEL : free);
        return new PointGroup(points, members, knots, y.beside(z));
    }

    /** A ring without a knuckle. */
    static PointGroup closed(List<OutlinePoint> ring) {
        List<Integer> members = new ArrayList<>();
        for (int i = 0; i <= ring.size(); i++)
            members.add(i % ring.size());
        double[] knots = knots(ring, members, CENTRIPETAL);
        CubicSpline y = CubicSpline.periodic(knots, column(ring, members, true));
        return new PointGroup(ring, members, knots, y.beside(CubicSpline.periodic(knots, column(ring, members, false))));
    }

    private static double[] knots(List<OutlinePoint> points, List<Integer> members, double power) {
        double[] knots = new double[members.size()];
        for (int i = 1; i < knots.length; i++)
            knots[i] = knots[i - 1]
                    + Math.pow(PointsInspection.gap(points.get(members.get(i - 1)), points.get(members.get(i))), power);
        return knots;
    }

    private static double[][] column(List<OutlinePoint> points, List<Integer> members, boolean breadth) {
        double[][] rows = new double[members.size()][1];
        for (int i = 0; i < rows.length; i++)
            rows[i][0] = breadth ? points.get(members.get(i)).y() : points.get(members.get(i)).z();
        return rows;
    }

    int size() { return members.size(); }

    int point(int k) { return members.get(k); }

    int firstPoint() { return members.getFirst(); }

    int lastPoint() { return members.getLast(); }

    SplineCurve curve() { return curve; }

    double knot(int k) { return knots[k]; }

    double from() { return from; }

    double to() { return to; }

    double chordLength() {
        double sum = 0;
        for (int k = 1; k < members.size(); k++)
            sum += PointsInspection.gap(points.get(members.get(k - 1)), points.get(members.get(k)));
        return sum;
    }

    void roundStart(double t, ArcCurve arc, boolean left) {
        from = t;
        before = Optional.of(arc);
        beforeTurnsLeft = left;
    }

    void roundEnd(double t, ArcCurve arc, boolean left) {
        to = t;
        after = Optional.of(arc);
        afterTurnsLeft = left;
    }

    /** Whether rounding has left anything of the spline. */
    boolean consumed() {
        return !(from <= to);
    }

    /** Whether the point k still lies on the curve after rounding; the two ends are on their arcs. */
    boolean keeps(int k) {
        return k == 0 || k == size() - 1 || knots[k] > from && knots[k] < to;
    }

    double cornerRadius() {
        return Math.max(points.get(firstPoint()).radius(), points.get(lastPoint()).radius());
    }

    /** Runs of curve from one member to another, with the arcs at rounded ends. */
    List<CurvePart> parts(int a, int b) {
        List<CurvePart> parts = new ArrayList<>();
        if (a == 0)
            before.ifPresent(arc -> parts.add(run(arc, beforeTurnsLeft)));
        double low = a == 0 ? from : knots[a];
        double high = b == size() - 1 ? to : knots[b];
        if (low < high)
            parts.add(new CurvePart(curve, low, high));
        if (b == size() - 1)
            after.ifPresent(arc -> parts.add(run(arc, afterTurnsLeft)));
        return parts;
    }

    private static CurvePart run(ArcCurve arc, boolean left) {
        return left ? CurvePart.whole(arc) : CurvePart.whole(arc).reversed();
    }

    /** Reports where the curve leaves the box round the four nearest points by more than a limit. */
    void reportOvershoot(double limit, List<SectionFault> faults) {
        if (Double.isInfinite(limit))
            return;
        double[] out = new double[6];
        for (int k = 0; k + 1 < size(); k++) {
            double worst = 0, worstY = 0, worstZ = 0;
            for (int look = 1; look < LOOKS; look++) {
                curve.at(knots[k] + (knots[k + 1] - knots[k]) * look / LOOKS, out);
                double off = outside(k, out[0], out[1]);
                if (off > worst) {
                    worst = off;
                    worstY = out[0];
                    worstZ = out[1];
                }
            }
            if (worst > limit)
                faults.add(new SectionFault.Overshoot(point(k), worstY, worstZ, worst));
        }
    }

    private double outside(int k, double y, double z) {
        double minY = Double.POSITIVE_INFINITY, minZ = minY, maxY = Double.NEGATIVE_INFINITY, maxZ = maxY;
        for (int i = Math.max(0, k - 1); i <= Math.min(size() - 1, k + 2); i++) {
            OutlinePoint p = points.get(members.get(i));
            minY = Math.min(minY, p.y());
            maxY = Math.max(maxY, p.y());
            minZ = Math.min(minZ, p.z());
            maxZ = Math.max(maxZ, p.z());
        }
        return Math.max(Math.max(minY - y, y - maxY), Math.max(minZ - z, z - maxZ));
    }
}
