package mouldwright.geometry.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.plane.PlanePoint;

/** The face of a parting board: the strip between a parting line and the edge of the flange, at right angles to the line and square
 *  to the way the mould leaves the plug, laid out flat. Where the line and the flange edge lie in one plane the layout is the board itself.
 *
 *  @param width    of the flange, metres
 *  @param standOff largest distance of line and flange edge from their mean plane, metres
 *  @param line     the parting line in the layout, from (0, 0)
 *  @param edge     the flange edge in the layout, point for point
 *  @param crowded  whether the flange edge runs backward somewhere: the line bends closer than the flange is wide */
public record PartingStrip(double width, double standOff, List<PlanePoint> line, List<PlanePoint> edge, boolean crowded) {

    /** Points nearer than this are one, metres. */
    private static final double SAME = 1e-7;

    /** Copies its lists. */
    public PartingStrip {
        line = List.copyOf(line);
        edge = List.copyOf(edge);
    }

    /** The strip along a line.
     *  @param pull  the way the mould leaves the plug
     *  @param width of the flange, metres
     *  @return empty for a line without length */
    public static Optional<PartingStrip> of(LongLine line, Pull pull, double width) {
        List<SurfacePoint> points = apart(line.points());
        if (points.size() < 2)
            return Optional.empty();
        List<Vector> inner = points.stream().map(p -> new Vector(p.x(), p.y(), p.z())).toList();
        List<Vector> outward = outward(points, inner, new Vector(pull.x(), pull.y(), pull.z()));
        List<Vector> outer = new ArrayList<>();
        for (int i = 0; i < inner.size(); i++)
            outer.add(inner.get(i).plus(outward.get(i).times(width)));
        List<Vector> both = new ArrayList<>(inner);
        both.addAll(outer);
        StripUnrolling flat = StripUnrolling.of(inner, outer);
        return Optional.of(new PartingStrip(width, MeanPlane.of(both, weights(inner), outward).largestDistance(both), flat.inner(), flat.outer(), flat.crowded()));
    }

    private static List<SurfacePoint> apart(List<SurfacePoint> points) {
        List<SurfacePoint> kept = new ArrayList<>();
        for (SurfacePoint p : points)
            if (kept.isEmpty() || Math.hypot(Math.hypot(p.x() - kept.getLast().x(), p.y() - kept.getLast().y()), p.z() - kept.getLast().z()) > SAME)
                kept.add(p);
        return kept;
    }

    /** Each point counts with the length of line about it. */
    private static double[] weights(List<Vector> line) {
        int n = line.size();
        double[] weights = new double[2 * n];
        for (int i = 0; i + 1 < n; i++) {
            double half = line.get(i + 1).minus(line.get(i)).length() / 2;
            for (int k : new int[] {i, i + 1, n + i, n + i + 1})
                weights[k] += half;
        }
        return weights;
    }

    /** The way the flange stands at each point: square to the line and to the pull, away from the plug. */
    private static List<Vector> outward(List<SurfacePoint> points, List<Vector> line, Vector pull) {
        List<Vector> tangents = tangents(line);
        List<Vector> ways = new ArrayList<>();
        for (int i = 0; i < line.size(); i++) {
            SurfacePoint p = points.get(i);
            Vector normal = new Vector(p.nx(), p.ny(), p.nz());
            Vector way = tangents.get(i).cross(pull);
            if (way.length() < SAME)
                way = normal; // the line runs along the pull
            Vector reference = normal.isFinite() && Math.abs(normal.dot(way)) > SAME ? normal : ways.isEmpty() ? way : ways.getLast();
            ways.add(way.unit().times(reference.dot(way) < 0 ? -1 : 1));
        }
        return turnedAlike(ways);
    }

    /** The ends of a line from a pointed end have no normal of their own and go by their neighbours. */
    private static List<Vector> turnedAlike(List<Vector> ways) {
        List<Vector> turned = new ArrayList<>(ways);
        if (ways.size() > 1 && ways.get(0).dot(ways.get(1)) < 0)
            turned.set(0, ways.get(0).times(-1));
        int last = ways.size() - 1;
        if (last > 1 && ways.get(last).dot(ways.get(last - 1)) < 0)
            turned.set(last, ways.get(last).times(-1));
        return turned;
    }

    /** Direction of the line at each point, exact on a circle however the points are spaced; at the ends the chord mirrors the neighbour's. */
    private static List<Vector> tangents(List<Vector> line) {
        int n = line.size();
        List<Vector> tangents = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            if (i == 0 || i == n - 1) {
                tangents.add(line.get(Math.min(i + 1, n - 1)).minus(line.get(Math.max(i - 1, 0))).unit());
                continue;
            }
            Vector before = line.get(i).minus(line.get(i - 1)), after = line.get(i + 1).minus(line.get(i));
            tangents.add(before.times(1 / before.dot(before)).plus(after.times(1 / after.dot(after))).unit());
        }
        if (n > 2) {
            tangents.set(0, mirrored(tangents.get(1), tangents.get(0)));
            tangents.set(n - 1, mirrored(tangents.get(n - 2), tangents.get(n - 1)));
        }
        return tangents;
    }

    private static Vector mirrored(Vector tangent, Vector chord) {
        return chord.times(2 * chord.dot(tangent)).minus(tangent).unit();
    }

    /** @return length of the parting line by its chords, metres */
    public double length() {
        double length = 0;
        for (int i = 0; i + 1 < line.size(); i++)
            length += Math.hypot(line.get(i + 1).y() - line.get(i).y(), line.get(i + 1).z() - line.get(i).z());
        return length;
    }

    /** @return the board's outline: out along the line, back along the flange edge */
    public List<PlanePoint> outline() {
        List<PlanePoint> ring = new ArrayList<>(line);
        ring.addAll(edge.reversed());
        return ring;
    }

    /** @return area of the board, m2 */
    public double area() {
        List<PlanePoint> ring = outline();
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            PlanePoint p = ring.get(i), q = ring.get((i + 1) % ring.size());
            twice += p.y() * q.z() - q.y() * p.z();
        }
        return Math.abs(twice) / 2;
    }
}
