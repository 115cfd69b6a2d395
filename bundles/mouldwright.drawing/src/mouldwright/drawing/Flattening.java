package mouldwright.drawing;

import java.util.List;

/** Turns bends into chords. */
final class Flattening {

    private static final int MOST = 4096;

    private Flattening() { }

    static void add(List<Spot> spots, Stroke stroke, double tolerance) {
        Spot from = spots.getLast();
        switch (stroke) {
            case Stroke.Line line -> spots.add(line.end());
            case Stroke.Arc arc -> arc(spots, from, arc, tolerance);
            case Stroke.Curve curve -> curve(spots, from, curve, tolerance);
        }
    }

    /** A chord that spans the angle a of a circle of radius r leaves it by r (1 - cos(a / 2)). */
    private static void arc(List<Spot> spots, Spot from, Stroke.Arc arc, double tolerance) {
        double chord = from.distance(arc.end()), angle = 4 * Math.atan(arc.bulge());
        if (chord == 0 || Math.abs(arc.bulge()) < 1e-9) {
            spots.add(arc.end());
            return;
        }
        double radius = chord / (2 * Math.abs(Math.sin(angle / 2)));
        double step = 2 * Math.acos(Math.max(-1, 1 - Math.min(tolerance, radius) / radius));
        int n = Math.min(MOST, Math.max(1, (int) Math.ceil(Math.abs(angle) / step)));
        Spot centre = centre(from, arc);
        double at = Math.atan2(from.y() - centre.y(), from.x() - centre.x());
        for (int i = 1; i < n; i++)
            spots.add(new Spot(centre.x() + radius * Math.cos(at + angle * i / n), centre.y() + radius * Math.sin(at + angle * i / n)));
        spots.add(arc.end());
    }

    /** The centre of an arc. */
    static Spot centre(Spot from, Stroke.Arc arc) {
        double b = arc.bulge(), along = (1 - b * b) / (4 * b), dx = arc.end().x() - from.x(), dy = arc.end().y() - from.y();
        return new Spot((from.x() + arc.end().x()) / 2 - dy * along, (from.y() + arc.end().y()) / 2 + dx * along);
    }

    /** n chords of a cubic leave it by at most |second difference| * sqrt(3) / (18 n^2) * 3, taken a little wider here. */
    private static void curve(List<Spot> spots, Spot from, Stroke.Curve curve, double tolerance) {
        double bend = Math.max(bend(from, curve.first(), curve.second()), bend(curve.first(), curve.second(), curve.end()));
        int n = Math.min(MOST, Math.max(1, (int) Math.ceil(Math.sqrt(0.75 * bend / tolerance))));
        for (int i = 1; i < n; i++) {
            double t = i / (double) n, s = 1 - t;
            double a = s * s * s, b = 3 * s * s * t, c = 3 * s * t * t, d = t * t * t;
            spots.add(new Spot(a * from.x() + b * curve.first().x() + c * curve.second().x() + d * curve.end().x(),
                    a * from.y() + b * curve.first().y() + c * curve.second().y() + d * curve.end().y()));
        }
        spots.add(curve.end());
    }

    private static double bend(Spot a, Spot b, Spot c) {
        return Math.hypot(a.x() - 2 * b.x() + c.x(), a.y() - 2 * b.y() + c.y());
    }
}
