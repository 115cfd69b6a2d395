package mouldwright.geometry.section;

import java.util.List;
import mouldwright.geometry.plane.PlanePoint;

/** Divides a stretch into chords the curve leaves by no more than a tolerance. */
final class ChordSampler {
    /** Chords looked at to begin with, so that no wave of a spline is missed. */
    private static final int FIRST = 8;
    private static final int DEEPEST = 16;

    private ChordSampler() { }

    /** Adds the ends of the chords, both ends of the stretch among them. */
    static void sample(Stretch stretch, double tolerance, List<PlanePoint> points) {
        PlanePoint before = place(stretch, 0);
        points.add(before);
        for (int i = 0; i < FIRST; i++) {
            PlanePoint after = place(stretch, (i + 1.0) / FIRST);
            divide(stretch, (double) i / FIRST, (i + 1.0) / FIRST, before, after, tolerance, 0, points);
            before = after;
        }
    }

    private static void divide(Stretch stretch, double from, double to, PlanePoint a, PlanePoint b, double tolerance, int depth,
            List<PlanePoint> points) {
        double middle = 0.5 * (from + to);
        PlanePoint m = place(stretch, middle);
        if (depth >= DEEPEST || off(a, b, m) <= tolerance && depth > 0) {
            points.add(b);
            return;
        }
        divide(stretch, from, middle, a, m, tolerance, depth + 1, points);
        divide(stretch, middle, to, m, b, tolerance, depth + 1, points);
    }

    private static PlanePoint place(Stretch stretch, double u) {
        CurvePoint p = stretch.at(u);
        return new PlanePoint(p.y(), p.z());
    }

    private static double off(PlanePoint a, PlanePoint b, PlanePoint m) {
        double y = b.y() - a.y(), z = b.z() - a.z(), length = Math.hypot(y, z);
        return length == 0 ? a.distance(m) : Math.abs(y * (m.z() - a.z()) - z * (m.y() - a.y())) / length;
    }
}
