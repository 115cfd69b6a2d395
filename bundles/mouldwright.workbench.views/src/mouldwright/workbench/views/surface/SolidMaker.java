package mouldwright.workbench.views.surface;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.section.SectionKind;

/** Makes a solid of a loft: rows of points round the section, as many in a bay as it needs to look smooth. */
public final class SolidMaker {

    private static final int ROWS_A_SPAN = 6;
    private static final int COLUMNS = 48;

    /** What is shown at a place of the surface. */
    public interface Tint {
        /** @param slice the section, @param stretch of it, @param u share of the stretch, @param point there, @param port whether the image of it is meant
         *  @return the figure, or NaN */
        double at(Slice slice, int stretch, double u, SurfacePoint point, boolean port);
    }

    private final Loft loft;
    private final Tint tint;
    private final int columnsAStretch;
    private final boolean mirrored;
    private final List<float[]> corners = new ArrayList<>();
    private final List<Integer> triangles = new ArrayList<>();
    private final List<Integer> lines = new ArrayList<>();

    private SolidMaker(Loft loft, Tint tint) {
        this.loft = loft;
        this.tint = tint;
        columnsAStretch = Math.max(4, COLUMNS / loft.stretches());
        mirrored = loft.kind() == SectionKind.HALF;
    }

    /** Makes the solid of a body, both sides of it. */
    public static Solid of(Loft loft, Tint tint) {
        SolidMaker maker = new SolidMaker(loft, tint);
        maker.side(false);
        if (maker.mirrored)
            maker.side(true);
        maker.end(0, 0, -1);
        maker.end(loft.spans() - 1, 1, 1);
        return maker.solid();
    }

    private void side(boolean port) {
        int before = -1;
        for (int span = 0; span < loft.spans(); span++)
            for (int row = 0; row <= ROWS_A_SPAN; row++) {
                int first = row(loft.inSpan(span, row / (double) ROWS_A_SPAN), port);
                if (row == 0 || span == loft.spans() - 1 && row == ROWS_A_SPAN)
                    station(first);
                if (row > 0)
                    join(before, first, port);
                before = first;
            }
    }

    private int row(Slice slice, boolean port) {
        int first = corners.size();
        float side = port ? -1 : 1;
        for (int stretch = 0; stretch < loft.stretches(); stretch++)
            for (int i = 0; i <= columnsAStretch; i++) {
                double u = i / (double) columnsAStretch;
                SurfacePoint p = slice.point(stretch, u);
                corners.add(new float[] {(float) p.x(), side * (float) p.y(), (float) p.z(), (float) p.nx(), side * (float) p.ny(), (float) p.nz(),
                        (float) tint.at(slice, stretch, u, p, port)});
            }
        return first;
    }

    /** The face of an end, flat and without a figure; a pointed end has none. */
    private void end(int span, double share, float aft) {
        Slice slice = loft.inSpan(span, share);
        if (slice.isDegenerate())
            return;
        int first = corners.size();
        rim(slice, false, aft);
        if (mirrored)
            rim(slice, true, aft);
        int n = corners.size() - first;
        float[] middle = {(float) slice.x(), mirrored ? 0 : (float) slice.centroid().y(), (float) slice.centroid().z(), aft, 0, 0, Float.NaN};
        corners.add(middle);
        for (int i = 0; i < n; i++) {
            triangles.add(first + n);
            triangles.add(first + (aft < 0 ? (i + 1) % n : i));
            triangles.add(first + (aft < 0 ? i : (i + 1) % n));
        }
    }

    /** One side of a rim: starboard from the bottom up, port from the top down. */
    private void rim(Slice slice, boolean port, float aft) {
        int n = rowLength();
        for (int i = 0; i < n; i++) {
            int at = port ? n - 1 - i : i;
            SurfacePoint p = slice.point(at / (columnsAStretch + 1), at % (columnsAStretch + 1) / (double) columnsAStretch);
            corners.add(new float[] {(float) p.x(), (float) (port ? -p.y() : p.y()), (float) p.z(), aft, 0, 0, Float.NaN});
        }
    }

    private int rowLength() {
        return loft.stretches() * (columnsAStretch + 1);
    }

    private void station(int first) {
        for (int i = 0; i + 1 < rowLength(); i++) {
            lines.add(first + i);
            lines.add(first + i + 1);
        }
    }

    private void join(int fore, int aft, boolean port) {
        for (int i = 0; i + 1 < rowLength(); i++) {
            if ((i + 1) % (columnsAStretch + 1) == 0)
                continue;
            triangle(fore + i, aft + i, aft + i + 1, port);
            triangle(fore + i, aft + i + 1, fore + i + 1, port);
        }
    }

    private void triangle(int a, int b, int c, boolean port) {
        triangles.add(a);
        triangles.add(port ? c : b);
        triangles.add(port ? b : c);
    }

    private Solid solid() {
        int n = corners.size();
        float[] places = new float[3 * n], normals = new float[3 * n], figures = new float[n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(corners.get(i), 0, places, 3 * i, 3);
            System.arraycopy(corners.get(i), 3, normals, 3 * i, 3);
            figures[i] = corners.get(i)[6];
        }
        return new Solid(places, normals, figures, triangles.stream().mapToInt(Integer::intValue).toArray(),
                lines.stream().mapToInt(Integer::intValue).toArray());
    }
}
