package mouldwright.geometry.offset;

import java.util.List;
import java.util.Optional;
import java.util.ArrayList;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;

/** A line moved off the outline of a section, and how it answers to what it was moved by. Each of its edges moves square to
 *  itself, so an area inside changes by the length of each edge times how fast it moves. */
public final class MovedLine {
    private static final MovedLine NOTHING = new MovedLine(Region.EMPTY, Optional.of(new int[0]), new double[0], new double[0],
            new double[0], new double[0]);

    private final Region region;
    private final List<Ring> rings = new ArrayList<>();

    /** A ring of the line.
     *  @param outline its corners
     *  @param hole    whether it bounds a hole
     *  @param rate    how fast the edge from each corner to the next moves inward as the build-up grows, metres per metre
     *  @param spread  how fast it would move outward if all it is moved by grew in proportion, metres */
    public record Ring(Outline outline, boolean hole, double[] rate, double[] spread) { }

    /** @param edges of each edge of the region's only ring the edge of the uncut line it lies on; empty where that is not known
     *  @param y @param z @param rate @param spread the uncut line */
    MovedLine(Region region, Optional<int[]> edges, double[] y, double[] z, double[] rate, double[] spread) {
        this.region = region;
        for (Outline outline : region.pieces())
            rings.add(ring(outline, false, edges.orElseGet(() -> nearest(outline, y, z)), rate, spread));
        for (Outline outline : region.holes())
            rings.add(ring(outline, true, nearest(outline, y, z), rate, spread));
    }

    /** Where there is no section, or nothing is moved. */
    public static MovedLine nothing() {
        return NOTHING;
    }

    private static Ring ring(Outline outline, boolean hole, int[] edges, double[] rate, double[] spread) {
        double[] itsRate = new double[edges.length], itsSpread = new double[edges.length];
        for (int i = 0; i < edges.length; i++) {
            itsRate[i] = rate[edges[i]];
            itsSpread[i] = spread[edges[i]];
        }
        return new Ring(outline, hole, itsRate, itsSpread);
    }

    /** A tangled line is cut to pieces of its edges, so the nearest edge is the one each piece came from. */
    private static int[] nearest(Outline outline, double[] y, double[] z) {
        int[] edges = new int[outline.size()];
        for (int i = 0; i < edges.length; i++) {
            int j = (i + 1) % edges.length;
            PlanePoint middle = new PlanePoint(0.5 * (outline.y(i) + outline.y(j)), 0.5 * (outline.z(i) + outline.z(j)));
            double least = Double.POSITIVE_INFINITY;
            for (int k = 0; k < y.length; k++) {
                double square = squareDistance(middle, y, z, k, (k + 1) % y.length);
                if (square < least) {
                    least = square;
                    edges[i] = k;
                }
            }
        }
        return edges;
    }

    private static double squareDistance(PlanePoint p, double[] y, double[] z, int a, int b) {
        double dy = y[b] - y[a], dz = z[b] - z[a], square = dy * dy + dz * dz;
        double w = square == 0 ? 0 : Math.clamp(((p.y() - y[a]) * dy + (p.z() - z[a]) * dz) / square, 0.0, 1.0);
        double fy = y[a] + w * dy - p.y(), fz = z[a] + w * dz - p.z();
        return fy * fy + fz * fz;
    }

    /** What lies inside. */
    public Region region() { return region; }

    /** The rings it consists of, outer ones first. */
    public List<Ring> rings() { return rings; }
}
