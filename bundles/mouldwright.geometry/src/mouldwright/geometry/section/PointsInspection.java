package mouldwright.geometry.section;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Looks at points as they were given, before any curve is drawn through them. */
final class PointsInspection {
    private final SectionKind kind;
    private final List<OutlinePoint> points;

    PointsInspection(SectionKind kind, List<OutlinePoint> points) {
        this.kind = kind;
        this.points = points;
    }

    /** Reports what is wrong. @return whether a curve can be drawn */
    boolean examine(List<SectionFault> faults) {
        int before = faults.size();
        for (int i = 0; i < points.size(); i++) {
            OutlinePoint p = points.get(i);
            if (!Tracer.usable(p.y()) || !Tracer.usable(p.z()))
                faults.add(new SectionFault.NotFinite(i));
            if (!(p.radius() >= 0) || !Tracer.usable(p.radius()))
                faults.add(new SectionFault.BadFigure("radius", p.radius()));
        }
        if (points.size() < 2)
            faults.add(new SectionFault.TooFewPoints(points.size()));
        if (faults.size() > before)
            return false;
        double rounding = Section.ROUNDING * size(points);
        for (int i = 0; i + 1 < points.size(); i++)
            if (gap(points.get(i), points.get(i + 1)) <= rounding)
                faults.add(new SectionFault.PointsDoubled(i, i + 1));
        lines(faults);
        if (kind == SectionKind.HALF)
            halfBreadths(rounding, faults);
        else
            ring(rounding, faults);
        return faults.size() == before;
    }

    private void lines(List<SectionFault> faults) {
        Map<String, Integer> seen = new HashMap<>();
        int most = kind == SectionKind.HALF ? 1 : 2;
        int distinct = kind == SectionKind.FULL && points.getFirst().line().equals(points.getLast().line())
                ? points.size() - 1 : points.size();                // both ends of a ring are one place
        for (OutlinePoint p : points.subList(0, distinct))
            p.line().ifPresent(line -> {
                if (seen.merge(line, 1, Integer::sum) == most + 1)
                    faults.add(new SectionFault.LineTwice(line));
            });
    }

    private void halfBreadths(double rounding, List<SectionFault> faults) {
        for (int i = 0; i < points.size(); i++)
            if (points.get(i).y() < -rounding)
                faults.add(new SectionFault.NegativeHalfBreadth(i, points.get(i).y()));
    }

    private void ring(double rounding, List<SectionFault> faults) {
        int last = points.size() - 1;
        for (int i : new int[] { 0, last })
            if (Math.abs(points.get(i).y()) > rounding && !(i == last && knifeEdge()))
                faults.add(new SectionFault.NotOnCentreline(i, points.get(i).y()));
        double gap = gap(points.getFirst(), points.getLast());
        if (gap > rounding && !knifeEdge())
            faults.add(new SectionFault.NotClosed(gap));
    }

    static double gap(OutlinePoint a, OutlinePoint b) {
        return Math.hypot(a.y() - b.y(), a.z() - b.z());
    }

    /** Diagonal of the box round the points, metres. */
    static double size(List<OutlinePoint> points) {
        double minY = Double.POSITIVE_INFINITY, minZ = minY, maxY = Double.NEGATIVE_INFINITY, maxZ = maxY;
        for (OutlinePoint p : points) {
            minY = Math.min(minY, p.y());
            maxY = Math.max(maxY, p.y());
            minZ = Math.min(minZ, p.z());
            maxZ = Math.max(maxZ, p.z());
        }
        return Math.hypot(maxY - minY, maxZ - minZ);
    }

    private static boolean straightLine(List<OutlinePoint> points) {
        OutlinePoint a = points.getFirst();
        OutlinePoint b = points.stream().max((p, q) -> Double.compare(gap(a, p), gap(a, q))).orElse(a);
        double length = gap(a, b);
        if (length == 0)
            return true;
        double rounding = Section.ROUNDING * size(points);
        return points.stream().allMatch(p -> Math.abs((b.y() - a.y()) * (p.z() - a.z())
                - (b.z() - a.z()) * (p.y() - a.y())) / length <= rounding);
    }

    private static boolean flat(List<OutlinePoint> points) {
        double rounding = Section.ROUNDING * size(points);
        boolean upright = points.stream().allMatch(p -> Math.abs(p.y()) <= rounding);
        boolean level = points.stream().allMatch(p -> Math.abs(p.z() - points.getFirst().z()) <= rounding);
        return upright || level;
    }

    /** Whether all points lie on one straight line that, in a half section, encloses nothing with the centreline. */
    boolean knifeEdge() {
        return straightLine(points) && (kind == SectionKind.FULL || flat(points));
    }
}
