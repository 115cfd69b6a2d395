package mouldwright.geometry.section;

import java.util.ArrayList;
import java.util.List;

/** Finds points that stand off the curve of their neighbours like a slip of the pen: each smooth point is left out in turn and
 *  compared with the spline through the others. */
public final class Fairness {
    /** A group of fewer points has no curve of its own once one is left out. */
    private static final int LEAST_POINTS = 5;
    /** A slip stands off this many times as far as the points near it do once it is gone. */
    private static final double STRIKING = 4;
    /** Points to each side of a candidate that are looked at again. */
    private static final int NEAR = 3;
    private static final int LOOKS = 64;

    private Fairness() { }

    /** Stand-offs of all points between knuckles whose group has five points at least.
     *  @param points an outline without faults
     *  @param kind   half or full; the closing point of a full one is not looked at */
    public static List<Standoff> round(List<OutlinePoint> points, SectionKind kind) {
        List<Standoff> found = new ArrayList<>();
        List<Integer> group = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            group.add(i);
            if (i > 0 && (points.get(i).knuckle() || i == points.size() - 1)) {
                if (group.size() >= LEAST_POINTS)
                    found.addAll(group(points, group, kind));
                group = new ArrayList<>(List.of(i));
            }
        }
        return found;
    }

    private static List<Standoff> group(List<OutlinePoint> points, List<Integer> group, SectionKind kind) {
        List<Standoff> found = new ArrayList<>();
        for (int k = 1; k + 1 < group.size(); k++) {
            List<Integer> rest = new ArrayList<>(group);
            rest.remove(k);
            PointGroup without = PointGroup.openByChord(points, rest, mirrored(points, rest.getFirst(), kind),
                    mirrored(points, rest.getLast(), kind));
            found.add(nearest(points.get(group.get(k)), group.get(k), without, k - 1));
        }
        return found;
    }

    private static boolean mirrored(List<OutlinePoint> points, int i, SectionKind kind) {
        boolean end = i == 0 || i == points.size() - 1;
        return kind == SectionKind.HALF && end && !points.get(i).knuckle()
                && Math.abs(points.get(i).y()) <= Section.ROUNDING * PointsInspection.size(points);
    }

    /** The place of a curve nearest to a point that was left out of one of its spans. */
    private static Standoff nearest(OutlinePoint point, int index, PointGroup curve, int span) {
        double from = curve.knot(span), to = curve.knot(span + 1), step = (to - from) / LOOKS;
        double[] out = new double[6];
        double best = from, least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= LOOKS; i++) {
            double off = distance(curve, from + i * step, point, out);
            if (off < least) {
                least = off;
                best = from + i * step;
            }
        }
        for (double h = step; h > 1e-9 * (to - from); h /= 2)
            for (double t : new double[] { best - h, best + h }) {
                double off = distance(curve, Math.clamp(t, from, to), point, out);
                if (off < least) {
                    least = off;
                    best = Math.clamp(t, from, to);
                }
            }
        curve.curve().at(best, out);
        return new Standoff(index, least, out[0], out[1]);
    }

    private static double distance(PointGroup curve, double t, OutlinePoint point, double[] out) {
        curve.curve().at(t, out);
        return Math.hypot(out[0] - point.y(), out[1] - point.z());
    }

    /** Those that look like slips. A slip makes its neighbours stand off too, so each candidate is taken away and the others
     *  near it are looked at again: they must then stand off several times less than the candidate does.
     *  @param points an outline without faults
     *  @param kind   half or full
     *  @param least  what is too small to matter, metres */
    public static List<Standoff> slips(List<OutlinePoint> points, SectionKind kind, double least) {
        List<Standoff> slips = new ArrayList<>();
        for (Standoff candidate : round(points, kind)) {
            if (candidate.off() <= least)
                continue;
            List<OutlinePoint> rest = new ArrayList<>(points);
            rest.remove(candidate.point());
            List<Standoff> others = round(rest, kind).stream()
                    .filter(s -> s.point() >= candidate.point() - NEAR && s.point() < candidate.point() + NEAR).toList();
            if (!others.isEmpty() && others.stream().allMatch(s -> STRIKING * s.off() < candidate.off()))
                slips.add(candidate);
        }
        return slips;
    }
}
