package mouldwright.exchange.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePoint;

/** Rows along the body and columns round it, close enough that a flat cell between four of them leaves the surface by no more than a tolerance.
 *  Spans and stretches are halved until that holds, so stations and knuckles are always among them. */
final class SurfaceGrid {

    private static final int DEEPEST = 9;

    /** A column. */
    record Column(int stretch, double u) { }

    private final Loft loft;
    private final double tolerance;
    private final List<Column> columns = new ArrayList<>();
    private final List<Slice> rows = new ArrayList<>();

    SurfaceGrid(Loft loft, double tolerance) {
        this.loft = loft;
        this.tolerance = tolerance;
        List<Slice> looks = new ArrayList<>();
        for (int span = 0; span < loft.spans(); span++)
            for (int q = 0; q <= 4; q++)
                if (q > 0 || span == 0)
                    looks.add(loft.inSpan(span, q / 4.0));
        for (int stretch = 0; stretch < loft.stretches(); stretch++) {
            if (stretch == 0)
                columns.add(new Column(0, 0));
            round(looks, stretch, 0, 1, 0);
        }
        for (int span = 0; span < loft.spans(); span++) {
            TreeMap<Double, Slice> known = new TreeMap<>();
            if (span == 0)
                rows.add(loft.inSpan(0, 0));
            along(span, 0, 1, 0, known);
        }
    }

    /** Places round the outline in order from bottom centre; the end of a stretch is the start of the next one. */
    List<Column> columns() { return columns; }

    /** Sections in order from the forward end. */
    List<Slice> rows() { return rows; }

    private void round(List<Slice> looks, int stretch, double from, double to, int depth) {
        if (depth < DEEPEST && looks.stream().anyMatch(slice -> bends(slice, stretch, from, to))) {
            round(looks, stretch, from, 0.5 * (from + to), depth + 1);
            round(looks, stretch, 0.5 * (from + to), to, depth + 1);
        } else {
            columns.add(new Column(stretch, to));
        }
    }

    private boolean bends(Slice slice, int stretch, double from, double to) {
        SurfacePoint a = slice.point(stretch, from), b = slice.point(stretch, to);
        for (int q = 1; q <= 3; q++)
            if (off(a, b, slice.point(stretch, from + q / 4.0 * (to - from))) > tolerance / 3)
                return true;
        return false;
    }

    private void along(int span, double from, double to, int depth, TreeMap<Double, Slice> known) {
        if (depth < DEEPEST && bends(span, from, to, known)) {
            along(span, from, 0.5 * (from + to), depth + 1, known);
            along(span, 0.5 * (from + to), to, depth + 1, known);
        } else {
            rows.add(slice(span, to, known));
        }
    }

    private Slice slice(int span, double share, TreeMap<Double, Slice> known) {
        return known.computeIfAbsent(share, at -> loft.inSpan(span, at));
    }

    private boolean bends(int span, double from, double to, TreeMap<Double, Slice> known) {
        Slice fore = slice(span, from, known), aft = slice(span, to, known), middle = slice(span, 0.5 * (from + to), known);
        SurfacePoint before = null, beforeAft = null;
        for (int c = 0; c < columns.size(); c++) {
            Column column = columns.get(c);
            SurfacePoint a = point(fore, column), b = point(aft, column);
            for (int q = 1; q <= 3; q++)
                if (off(a, b, point(slice(span, from + q / 4.0 * (to - from), known), column)) > tolerance / 3)
                    return true;
            if (c > 0) {
                double u = 0.5 * ((columns.get(c - 1).stretch() == column.stretch() ? columns.get(c - 1).u() : 0) + column.u());
                if (twist(before, b, middle.point(column.stretch(), u)) > tolerance || twist(a, beforeAft, middle.point(column.stretch(), u)) > tolerance)
                    return true;
            }
            before = a;
            beforeAft = b;
        }
        return false;
    }

    static SurfacePoint point(Slice slice, Column column) {
        return slice.point(column.stretch(), column.u());
    }

    /** How far the middle of a cell's diagonal stands off the surface, along its normal. */
    private static double twist(SurfacePoint a, SurfacePoint b, SurfacePoint middle) {
        return Math.abs((0.5 * (a.x() + b.x()) - middle.x()) * middle.nx() + (0.5 * (a.y() + b.y()) - middle.y()) * middle.ny()
                + (0.5 * (a.z() + b.z()) - middle.z()) * middle.nz());
    }

    /** How far a place stands off the straight line between two others. */
    private static double off(SurfacePoint a, SurfacePoint b, SurfacePoint p) {
        double x = b.x() - a.x(), y = b.y() - a.y(), z = b.z() - a.z(), square = x * x + y * y + z * z;
        double px = p.x() - a.x(), py = p.y() - a.y(), pz = p.z() - a.z();
        double w = square == 0 ? 0 : Math.clamp((px * x + py * y + pz * z) / square, 0.0, 1.0);
        return Math.sqrt(Math.pow(px - w * x, 2) + Math.pow(py - w * y, 2) + Math.pow(pz - w * z, 2));
    }
}
