package mouldwright.exchange.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.offset.FoamLine;
import mouldwright.geometry.section.SectionKind;

/** Meshes a lofted body, closed all round: a half body is mirrored, closures to the centreline and both end faces are filled, and an end that is a
 *  point or a knife edge closes by itself. */
public final class LoftMesh {

    /** Nearer to the centreline than this share of the body's size a place lies on it: what is lost when lengths are converted. */
    private static final double ROUNDING = 1e-9;

    private final Loft loft;
    private final MeshOrder order;
    private final SurfaceGrid grid;
    private final boolean half;
    private final int around;
    private double[] places = new double[3000];
    private int placeCount;
    private int[] corners = new int[6000];
    private int cornerCount;

    private LoftMesh(Loft loft, MeshOrder order) {
        this.loft = loft;
        this.order = order;
        this.half = loft.kind() == SectionKind.HALF;
        grid = new SurfaceGrid(loft, order.tolerance());
        around = half ? 2 * grid.columns().size() : grid.columns().size() - 1;
    }

    /** Meshes a body.
     *  @param loft  the body
     *  @param order what is taken off, and how finely */
    public static TriangleMesh of(Loft loft, MeshOrder order) {
        return new LoftMesh(loft, order).mesh();
    }

    private TriangleMesh mesh() {
        List<int[]> rings = new ArrayList<>();
        int last = grid.rows().size() - 1;
        for (int row = 0; row <= last; row++)
            rings.add(ring(grid.rows().get(row), row == 0 ? -1 : row == last ? 1 : 0));
        for (int row = 0; row < last; row++)
            band(rings.get(row), rings.get(row + 1));
        cap(rings.getFirst(), true);
        cap(rings.getLast(), false);
        return new TriangleMesh(Arrays.copyOf(places, placeCount), Arrays.copyOf(corners, cornerCount));
    }

    /** The places of a row, counter-clockwise seen from aft. What is one place is one number.
     *  @param end -1 forward, 1 aft, 0 between */
    private int[] ring(Slice slice, int end) {
        int n = grid.columns().size();
        double[][] starboard = new double[n][];
        double size = 0;
        for (int c = 0; c < n; c++) {
            starboard[c] = moved(slice, c, end);
            size = Math.max(size, Math.hypot(starboard[c][1], starboard[c][2]) + Math.abs(starboard[c][0]));
        }
        boolean point = true, edge = half;
        for (double[] place : starboard) {
            if (half && Math.abs(place[1]) <= ROUNDING * size)
                place[1] = 0;
            point &= distance(place, starboard[0]) <= ROUNDING * size;
            edge &= place[1] == 0;
        }
        int[] ring = new int[around];
        for (int c = 0; c < (half ? n : n - 1); c++)
            ring[c] = c > 0 && point ? ring[0] : place(starboard[c]);
        for (int c = 0; half && c < n; c++) {
            boolean same = point || edge || (c == 0 || c == n - 1) && starboard[c][1] == 0;
            ring[around - 1 - c] = same ? ring[c] : place(new double[] { starboard[c][0], -starboard[c][1], starboard[c][2] });
        }
        return ring;
    }

    private static double distance(double[] a, double[] b) {
        return Math.sqrt((a[0] - b[0]) * (a[0] - b[0]) + (a[1] - b[1]) * (a[1] - b[1]) + (a[2] - b[2]) * (a[2] - b[2]));
    }

    private int place(double[] at) {
        if (placeCount == places.length)
            places = Arrays.copyOf(places, 2 * placeCount);
        System.arraycopy(at, 0, places, placeCount, 3);
        placeCount += 3;
        return placeCount / 3 - 1;
    }

    /** A place of the surface with the build-up taken off. */
    private double[] moved(Slice slice, int c, int end) {
        SurfaceGrid.Column column = grid.columns().get(c);
        SurfacePoint here = SurfaceGrid.point(slice, column);
        double[] place = { here.x(), here.y(), here.z() };
        if (order.buildUp().layers().isEmpty() && order.forward() == 0 && order.aft() == 0)
            return place;
        MovedPlace way = new MovedPlace();
        if (slice.isDegenerate() && end != 0)
            for (SurfaceGrid.Column other : tip(slice, c))
                add(way, slice, other);
        else {
            add(way, slice, column);
            if (end != 0)
                way.face(end, 0, 0, end < 0 ? order.forward() : order.aft());
        }
        boolean ends = c == grid.columns().size() - 1;
        if (column.u() == 1 && !(ends && half))
            add(way, slice, new SurfaceGrid.Column(ends ? 0 : column.stretch() + 1, 0));
        if (c == 0 && !half)
            add(way, slice, new SurfaceGrid.Column(loft.stretches() - 1, 1));
        double[] by = way.way();
        for (int i = 0; i < 3; i++)
            place[i] += by[i];
        return place;
    }

    /** Columns that end in the same place: all of them at a point, the own one at a knife edge. */
    private List<SurfaceGrid.Column> tip(Slice slice, int c) {
        SurfacePoint first = SurfaceGrid.point(slice, grid.columns().getFirst());
        boolean point = grid.columns().stream().allMatch(column -> Math.hypot(SurfaceGrid.point(slice, column).y() - first.y(),
                SurfaceGrid.point(slice, column).z() - first.z()) == 0);
        return point ? grid.columns() : List.of(grid.columns().get(c));
    }

    private void add(MovedPlace way, Slice slice, SurfaceGrid.Column column) {
        SurfacePoint point = SurfaceGrid.point(slice, column);
        double thickness = FoamLine.thickness(slice, slice.place(column.stretch(), column.u()), order.buildUp());
        if (half && point.y() == 0)
            way.mirrored(point, thickness);
        else
            way.face(point.nx(), point.ny(), point.nz(), thickness);
    }

    private void band(int[] fore, int[] aft) {
        for (int j = 0; j < around; j++) {
            int k = (j + 1) % around;
            if (square(fore[j], aft[k]) <= square(fore[k], aft[j])) {
                triangle(fore[j], fore[k], aft[k]);
                triangle(fore[j], aft[k], aft[j]);
            } else {
                triangle(fore[j], fore[k], aft[j]);
                triangle(fore[k], aft[k], aft[j]);
            }
        }
    }

    private double square(int a, int b) {
        double sum = 0;
        for (int i = 0; i < 3; i++)
            sum += (places[3 * a + i] - places[3 * b + i]) * (places[3 * a + i] - places[3 * b + i]);
        return sum;
    }

    private void cap(int[] ring, boolean forward) {
        List<Integer> kept = new ArrayList<>();
        for (int place : ring)
            if (kept.isEmpty() || kept.getLast() != place)
                kept.add(place);
        while (kept.size() > 1 && kept.getLast().equals(kept.getFirst()))
            kept.removeLast();
        if (kept.size() < 3 || kept.stream().distinct().count() < kept.size())
            return;                                             // a point or a knife edge has no face
        double[] y = kept.stream().mapToDouble(place -> places[3 * place + 1]).toArray();
        double[] z = kept.stream().mapToDouble(place -> places[3 * place + 2]).toArray();
        int[] cut = Polygons.triangles(y, z);
        for (int i = 0; i < cut.length; i += 3)
            triangle(kept.get(cut[i]), kept.get(cut[forward ? i + 2 : i + 1]), kept.get(cut[forward ? i + 1 : i + 2]));
    }

    /** Left out where two of its corners are one place. */
    private void triangle(int a, int b, int c) {
        if (a == b || b == c || c == a)
            return;
        if (cornerCount == corners.length)
            corners = Arrays.copyOf(corners, 2 * cornerCount);
        corners[cornerCount++] = a;
        corners[cornerCount++] = b;
        corners[cornerCount++] = c;
    }
}
