package mouldwright.geometry.draft;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.plane.PlanePoint;

/** A strip between two lines in space, laid out flat triangle by triangle: every length of the two lines and of the rungs between them is kept,
 *  and one diagonal of each field. Exact for a flat strip and, up to its chords, for one that can be developed.
 *
 *  @param inner   from (0, 0), the first rung along z
 *  @param outer   point for point
 *  @param crowded whether the outer line runs backward somewhere */
record StripUnrolling(List<PlanePoint> inner, List<PlanePoint> outer, boolean crowded) {

    static StripUnrolling of(List<Vector> in, List<Vector> out) {
        List<PlanePoint> inner = new ArrayList<>(List.of(new PlanePoint(0, 0)));
        List<PlanePoint> outer = new ArrayList<>(List.of(new PlanePoint(0, distance(in.getFirst(), out.getFirst()))));
        boolean crowded = false;
        for (int i = 0; i + 1 < in.size(); i++) {
            PlanePoint p = inner.getLast(), q = outer.getLast();
            PlanePoint next = placed(p, q, distance(in.get(i), in.get(i + 1)), distance(out.get(i), in.get(i + 1)), 1);
            boolean back = out.get(i + 1).minus(out.get(i)).dot(in.get(i + 1).minus(in.get(i))) < 0;
            crowded |= back;
            inner.add(next);
            outer.add(placed(next, q, distance(in.get(i + 1), out.get(i + 1)), distance(out.get(i), out.get(i + 1)), back ? -1 : 1));
        }
        return new StripUnrolling(inner, outer, crowded);
    }

    /** The place at given distances from two others, to the right of the way from the first to the second; to the left if the side is -1. */
    private static PlanePoint placed(PlanePoint p, PlanePoint q, double fromP, double fromQ, int side) {
        double dy = q.y() - p.y(), dz = q.z() - p.z(), base = Math.hypot(dy, dz);
        if (base == 0)
            return new PlanePoint(p.y() + side * fromP, p.z());
        double along = (fromP * fromP - fromQ * fromQ + base * base) / (2 * base);
        double aside = side * Math.sqrt(Math.max(0, fromP * fromP - along * along));
        return new PlanePoint(p.y() + (along * dy + aside * dz) / base, p.z() + (along * dz - aside * dy) / base);
    }

    private static double distance(Vector a, Vector b) {
        return b.minus(a).length();
    }
}
