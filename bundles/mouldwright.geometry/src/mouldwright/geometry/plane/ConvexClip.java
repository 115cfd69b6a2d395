package mouldwright.geometry.plane;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;

/** A convex ring to clip others by. What it cuts out of a ring is again a ring, whose pieces may hang together by a line there and
 *  back along the convex ring; such lines enclose nothing, so areas and what lies between heights come out right.
 *  Source: I. E. Sutherland and G. W. Hodgman, Reentrant polygon clipping, 1974. */
public final class ConvexClip {
    private final Outline ring;
    private final double minY;
    private final double maxY;
    private final double minZ;
    private final double maxZ;

    private ConvexClip(Outline ring) {
        this.ring = ring;
        minY = ring.minY();
        maxY = ring.maxY();
        minZ = ring.minZ();
        maxZ = ring.maxZ();
    }

    /** Convex parts that together cover some outlines and do not overlap. */
    public static List<ConvexClip> covering(List<Outline> outlines) {
        if (outlines.stream().allMatch(ConvexClip::isConvex) && apart(outlines))
            return outlines.stream().map(ConvexClip::new).toList();
        Region all = Region.EMPTY;
        for (Outline outline : outlines)
            all = all.union(Region.of(outline));
        List<ConvexClip> parts = new ArrayList<>();
        for (Piece piece : all.parts()) {
            Geometry triangles = new ConstrainedDelaunayTriangulator(piece.polygon()).getResult();
            for (Object triangle : PolygonExtracter.getPolygons(triangles.norm()))
                parts.add(new ConvexClip(Piece.of((Polygon) triangle).outer()));
        }
        return parts;
    }

    private static boolean isConvex(Outline o) {
        int n = o.size();
        double turn = 0;
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n, k = (i + 2) % n;
            double ay = o.y(j) - o.y(i), az = o.z(j) - o.z(i), by = o.y(k) - o.y(j), bz = o.z(k) - o.z(j);
            double sine = ay * bz - az * by;
            if (sine < 0)
                return false;
            turn += Math.atan2(sine, ay * by + az * bz);
        }
        return n > 2 && turn < 3 * Math.PI;                     // once round, not a star
    }

    private static boolean apart(List<Outline> outlines) {
        for (Outline a : outlines)
            for (Outline b : outlines)
                if (a != b && a.maxY() > b.minY() && b.maxY() > a.minY() && a.maxZ() > b.minZ() && b.maxZ() > a.minZ())
                    return false;
        return true;
    }

    /** What of a ring lies inside; empty if nothing does. */
    public Optional<Outline> of(Outline other) {
        if (other.maxY() <= minY || other.minY() >= maxY || other.maxZ() <= minZ || other.minZ() >= maxZ)
            return Optional.empty();
        double[] y = other.ys(), z = other.zs();
        int n = y.length;
        for (int side = 0; side < ring.size(); side++) {
            double[] outY = new double[2 * n + 2], outZ = new double[2 * n + 2];
            int count = 0;
            for (int i = 0, h = n - 1; i < n; h = i++) {
                double before = inside(side, y[h], z[h]), here = inside(side, y[i], z[i]);
                if (before < 0 != here < 0) {
                    double w = before / (before - here);
                    outY[count] = y[h] + w * (y[i] - y[h]);
                    outZ[count++] = z[h] + w * (z[i] - z[h]);
                }
                if (here >= 0) {
                    outY[count] = y[i];
                    outZ[count++] = z[i];
                }
            }
            y = outY;
            z = outZ;
            n = count;
        }
        return n < 3 ? Optional.empty() : Optional.of(Outline.ring(Arrays.copyOf(y, n), Arrays.copyOf(z, n)));
    }

    /** Not negative on the inner side of one of its sides. */
    private double inside(int side, double y, double z) {
        int next = side + 1 == ring.size() ? 0 : side + 1;
        double ay = ring.y(side), az = ring.z(side);
        return (ring.y(next) - ay) * (z - az) - (ring.z(next) - az) * (y - ay);
    }

    /** Share of a straight line that runs inside, 0 to 1. Source: M. Cyrus and J. Beck, Generalized clipping, 1978. */
    public double share(double fromY, double fromZ, double toY, double toZ) {
        if (fromY <= minY && toY <= minY || fromY >= maxY && toY >= maxY || fromZ <= minZ && toZ <= minZ || fromZ >= maxZ && toZ >= maxZ)
            return 0;
        double enter = 0, leave = 1;
        for (int side = 0; side < ring.size() && enter < leave; side++) {
            double before = inside(side, fromY, fromZ), after = inside(side, toY, toZ);
            if (before < 0 && after < 0)
                return 0;
            if (before < 0)
                enter = Math.max(enter, before / (before - after));
            else if (after < 0)
                leave = Math.min(leave, before / (before - after));
        }
        return Math.max(0, leave - enter);
    }
}
