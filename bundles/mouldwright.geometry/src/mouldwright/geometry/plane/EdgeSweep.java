package mouldwright.geometry.plane;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.CGAlgorithmsDD;

/** Looks for crossings among the edges of closed rings, from the lowest edge up, so that only edges at one height meet.
 *  Which side of an edge a corner lies on is decided exactly, so what is found does not hang on rounding. */
final class EdgeSweep {
    /** Rounding of a cross product of differences, as a share of its terms: what is clear of it needs no exact sum.
     *  Source: J. R. Shewchuk, Adaptive precision floating-point arithmetic, 1997. */
    private static final double ROUNDING = 1e-15;

    private final double[] y;
    private final double[] z;
    private final int[] ring;                       // of each edge's ring the first edge
    private final int[] size;                       // of each edge's ring how many edges
    private final boolean othersOnly;
    private final List<Crossing> found = new ArrayList<>();
    private boolean touching;

    private EdgeSweep(double[] y, double[] z, int[] ring, int[] size, boolean othersOnly) {
        this.y = y;
        this.z = z;
        this.ring = ring;
        this.size = size;
        this.othersOnly = othersOnly;
    }

    /** Where a ring crosses itself; empty where it touches itself without crossing.
     *  @param y @param z its corners, no two neighbours at one place */
    static Optional<List<Crossing>> within(double[] y, double[] z) {
        int[] size = new int[y.length];
        Arrays.fill(size, y.length);
        return new EdgeSweep(y, z, new int[y.length], size, false).sweep();
    }

    /** Where two simple rings cross; empty where they touch without crossing. Edges of the second are counted on from the
     *  first's. */
    static Optional<List<Crossing>> between(Outline a, Outline b) {
        int n = a.size(), all = n + b.size();
        double[] y = Arrays.copyOf(a.ys(), all), z = Arrays.copyOf(a.zs(), all);
        System.arraycopy(b.ys(), 0, y, n, b.size());
        System.arraycopy(b.zs(), 0, z, n, b.size());
        int[] ring = new int[all], size = new int[all];
        Arrays.fill(ring, n, all, n);
        Arrays.fill(size, 0, n, n);
        Arrays.fill(size, n, all, b.size());
        return new EdgeSweep(y, z, ring, size, true).sweep();
    }

    private int next(int edge) {
        int next = edge + 1;
        return next == ring[edge] + size[edge] ? ring[edge] : next;
    }

    private Optional<List<Crossing>> sweep() {
        int n = y.length;
        double[] bottoms = new double[n], tops = new double[n], lefts = new double[n], rights = new double[n];
        for (int i = 0; i < n; i++) {
            int next = next(i);
            bottoms[i] = Math.min(z[i], z[next]);
            tops[i] = Math.max(z[i], z[next]);
            lefts[i] = Math.min(y[i], y[next]);
            rights[i] = Math.max(y[i], y[next]);
        }
        int[] order = Order.of(bottoms);
        int[] active = new int[n];
        int count = 0;
        for (int edge : order) {
            int kept = 0;
            for (int k = 0; k < count; k++) {
                int other = active[k];
                if (tops[other] < bottoms[edge])
                    continue;
                active[kept++] = other;
                if (rights[other] < lefts[edge] || rights[edge] < lefts[other] || othersOnly && ring[edge] == ring[other])
                    continue;
                meet(Math.min(edge, other), Math.max(edge, other));
                if (touching)
                    return Optional.empty();
            }
            active[kept++] = edge;
            count = kept;
        }
        return Optional.of(found);
    }

    /** Two edges whose boxes meet. */
    private void meet(int i, int j) {
        int in = next(i), jn = next(j);
        boolean follows = in == j, leads = jn == i;
        if (follows || leads) {
            touching |= follows && foldsBack(i, in, jn) || leads && foldsBack(j, jn, in);
            return;
        }
        int a = side(i, in, j), b = side(i, in, jn), c = side(j, jn, i), d = side(j, jn, in);
        if (a == 0 && b == 0)
            touching = true;                                    // in one line, and their boxes meet
        else if (a * b <= 0 && c * d <= 0) {
            if (a * b == 0 || c * d == 0)
                touching = true;
            else
                found.add(crossing(i, j, d > 0));
        }
    }

    /** Whether the way from a to b and on to c runs back along itself. */
    private boolean foldsBack(int a, int b, int c) {
        return side(a, b, c) == 0 && (y[b] - y[a]) * (y[c] - y[b]) + (z[b] - z[a]) * (z[c] - z[b]) <= 0;
    }

    /** To which side of the line from a to b a corner lies: +1 left, -1 right, 0 on it. */
    private int side(int a, int b, int c) {
        double left = (y[b] - y[a]) * (z[c] - z[a]), right = (z[b] - z[a]) * (y[c] - y[a]);
        double cross = left - right;
        if (Math.abs(cross) > ROUNDING * (Math.abs(left) + Math.abs(right)))
            return cross > 0 ? 1 : -1;
        return CGAlgorithmsDD.orientationIndex(y[a], z[a], y[b], z[b], y[c], z[c]);
    }

    private Crossing crossing(int i, int j, boolean enters) {
        int in = next(i), jn = next(j);
        double ay = y[in] - y[i], az = z[in] - z[i], by = y[jn] - y[j], bz = z[jn] - z[j];
        double gy = y[j] - y[i], gz = z[j] - z[i], cross = ay * bz - az * by;
        double onFirst = Math.clamp((gy * bz - gz * by) / cross, 0.0, 1.0);
        double onSecond = Math.clamp((gy * az - gz * ay) / cross, 0.0, 1.0);
        return new Crossing(i, j, onFirst, onSecond, enters, y[i] + onFirst * ay, z[i] + onFirst * az);
    }
}
