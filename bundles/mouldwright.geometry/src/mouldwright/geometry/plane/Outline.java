package mouldwright.geometry.plane;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A closed ring of straight pieces in a section plane, counter-clockwise in (y, z), that is, seen from aft looking forward
 *  with starboard to the right. The first point is not repeated. */
public final class Outline {
    private final double[] y;
    private final double[] z;

    private Outline(double[] y, double[] z) {
        this.y = y;
        this.z = z;
    }

    /** Through the given points, turned counter-clockwise if need be; a point that repeats the one before it is left out.
     *  @param points metres */
    public static Outline of(List<PlanePoint> points) {
        List<PlanePoint> kept = new ArrayList<>();
        for (PlanePoint p : points)
            if (kept.isEmpty() || !kept.getLast().equals(p))
                kept.add(p);
        while (kept.size() > 1 && kept.getLast().equals(kept.getFirst()))
            kept.removeLast();
        double[] y = kept.stream().mapToDouble(PlanePoint::y).toArray();
        double[] z = kept.stream().mapToDouble(PlanePoint::z).toArray();
        Outline ring = new Outline(y, z);
        return ring.signedArea() < 0 ? of(kept.reversed()) : ring;
    }

    /** A ring as it stands: counter-clockwise, no corner repeated. The arrays are kept, not copied. */
    static Outline ring(double[] y, double[] z) {
        return new Outline(y, z);
    }

    /** The corners in order. */
    public List<PlanePoint> points() {
        List<PlanePoint> points = new ArrayList<>();
        for (int i = 0; i < y.length; i++)
            points.add(new PlanePoint(y[i], z[i]));
        return points;
    }

    /** Number of corners. */
    public int size() { return y.length; }

    /** Half-breadth of a corner, metres. */
    public double y(int corner) { return y[corner]; }

    /** Height of a corner, metres. */
    public double z(int corner) { return z[corner]; }

    private double signedArea() {
        double twice = 0;
        for (int i = 1; i + 1 < y.length; i++)
            twice += (y[i] - y[0]) * (z[i + 1] - z[0]) - (z[i] - z[0]) * (y[i + 1] - y[0]);
        return twice / 2;
    }

    /** Area and first moments by the shoelace formula, about the first corner so that distance from the origin costs no
     *  digits. */
    private double[] moments() {
        double area = 0, my = 0, mz = 0;
        for (int i = 1; i + 1 < y.length; i++) {
            double ay = y[i] - y[0], az = z[i] - z[0], by = y[i + 1] - y[0], bz = z[i + 1] - z[0];
            double twice = ay * bz - az * by;
            area += twice / 2;
            my += twice * (ay + by) / 6;
            mz += twice * (az + bz) / 6;
        }
        return new double[] { area, my, mz };
    }

    /** Area, square metres, not negative. */
    public double area() {
        return Math.abs(signedArea());
    }

    /** Length all round, metres. */
    public double length() {
        double sum = 0;
        for (int i = 0; i < y.length; i++)
            sum += Math.hypot(y[next(i)] - y[i], z[next(i)] - z[i]);
        return sum;
    }

    private int next(int i) {
        return i + 1 == y.length ? 0 : i + 1;
    }

    /** Centroid of the area; of a ring without area its first corner. */
    public PlanePoint centroid() {
        double[] m = moments();
        return m[0] == 0 ? new PlanePoint(y[0], z[0]) : new PlanePoint(y[0] + m[1] / m[0], z[0] + m[2] / m[0]);
    }

    /** Scaled by a factor about y = 0, z = 0. */
    public Outline scaled(double factor) {
        return of(points().stream().map(p -> new PlanePoint(p.y() * factor, p.z() * factor)).toList());
    }

    boolean runsClockwise() {
        return signedArea() < 0;
    }

    Outline counterClockwise() {
        return runsClockwise() ? of(points().reversed()) : this;
    }

    /** Scaled by a factor about its centroid. */
    Outline swollen(double factor) {
        PlanePoint centre = centroid();
        double[] py = new double[y.length], pz = new double[z.length];
        for (int i = 0; i < y.length; i++) {
            py[i] = centre.y() + (y[i] - centre.y()) * factor;
            pz[i] = centre.z() + (z[i] - centre.z()) * factor;
        }
        return new Outline(py, pz);
    }

    /** Smallest half-breadth, metres. */
    public double minY() { return least(y); }

    /** Largest half-breadth, metres. */
    public double maxY() { return greatest(y); }

    /** Lowest point, metres. */
    public double minZ() { return least(z); }

    /** Highest point, metres. */
    public double maxZ() { return greatest(z); }

    private static double least(double[] values) {
        double least = Double.POSITIVE_INFINITY;
        for (double v : values)
            least = Math.min(least, v);
        return least;
    }

    private static double greatest(double[] values) {
        double greatest = Double.NEGATIVE_INFINITY;
        for (double v : values)
            greatest = Math.max(greatest, v);
        return greatest;
    }

    /** Green's formula with heights clipped to the band: what an edge spans outside it adds nothing. */
    public double areaBetween(double dy, double dz, double low, double high) {
        double sum = 0;
        for (int i = 0; i < y.length; i++) {
            int j = next(i);
            double h0 = y[i] * dy + z[i] * dz, h1 = y[j] * dy + z[j] * dz;
            double a = Math.clamp(h0, low, high), b = Math.clamp(h1, low, high);
            if (a == b)
                continue;
            double w0 = y[i] * dz - z[i] * dy, w1 = y[j] * dz - z[j] * dy;
            double wa = w0 + (w1 - w0) * (a - h0) / (h1 - h0), wb = w0 + (w1 - w0) * (b - h0) / (h1 - h0);
            sum += 0.5 * (wa + wb) * (b - a);
        }
        return Math.abs(sum);
    }

    /** Lowest place along a direction, metres from the origin. */
    public double lowest(double directionY, double directionZ) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < y.length; i++)
            least = Math.min(least, y[i] * directionY + z[i] * directionZ);
        return least;
    }

    /** A place inside, halfway over the widest part at about half height; empty for a ring without area. */
    Optional<PlanePoint> inside() {
        double middle = 0.5 * (minZ() + maxZ()), below = minZ(), above = maxZ();
        for (double at : z) {                                   // between corners, so that no edge ends there
            below = at <= middle ? Math.max(below, at) : below;
            above = at > middle ? Math.min(above, at) : above;
        }
        double height = 0.5 * (below + above);
        double[] cuts = new double[y.length];
        int count = 0;
        for (int i = 0; i < y.length; i++) {
            int j = next(i);
            if (z[i] <= height != z[j] <= height)
                cuts[count++] = y[i] + (y[j] - y[i]) * (height - z[i]) / (z[j] - z[i]);
        }
        Arrays.sort(cuts, 0, count);
        double width = 0, at = 0;
        for (int k = 0; k + 1 < count; k += 2)
            if (cuts[k + 1] - cuts[k] > width) {
                width = cuts[k + 1] - cuts[k];
                at = 0.5 * (cuts[k] + cuts[k + 1]);
            }
        return width > 0 ? Optional.of(new PlanePoint(at, height)) : Optional.empty();
    }

    private double squareDistance(int edge, double py, double pz) {
        int to = next(edge);
        double dy = y[to] - y[edge], dz = z[to] - z[edge], square = dy * dy + dz * dz;
        double w = square == 0 ? 0 : Math.clamp(((py - y[edge]) * dy + (pz - z[edge]) * dz) / square, 0.0, 1.0);
        double fy = y[edge] + w * dy - py, fz = z[edge] + w * dz - pz;
        return fy * fy + fz * fz;
    }

    /** Whether a place lies inside the ring; one exactly on it may count either way. */
    public boolean contains(PlanePoint place) {
        return Winding.number(y, z, place.y(), place.z()) != 0;
    }

    /** Shortest distance from a place to the ring itself, metres. */
    public double distance(PlanePoint place) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < y.length; i++)
            least = Math.min(least, squareDistance(i, place.y(), place.z()));
        return Math.sqrt(least);
    }

    /** The place of the ring itself that is nearest to a place. */
    public PlanePoint nearest(PlanePoint place) {
        double least = Double.POSITIVE_INFINITY;
        PlanePoint nearest = place;
        for (int i = 0; i < y.length; i++) {
            double distance = squareDistance(i, place.y(), place.z());
            if (distance < least) {
                least = distance;
                nearest = foot(i, place);
            }
        }
        return nearest;
    }

    private PlanePoint foot(int edge, PlanePoint place) {
        int to = next(edge);
        double dy = y[to] - y[edge], dz = z[to] - z[edge], square = dy * dy + dz * dz;
        double w = square == 0 ? 0 : Math.clamp(((place.y() - y[edge]) * dy + (place.z() - z[edge]) * dz) / square, 0.0, 1.0);
        return new PlanePoint(y[edge] + w * dy, z[edge] + w * dz);
    }

    double[] ys() { return y; }

    double[] zs() { return z; }
}
