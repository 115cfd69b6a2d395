package mouldwright.geometry.loft;

import java.util.function.IntToDoubleFunction;
import mouldwright.geometry.curve.Kronrod;

/** Quadrature round the outline: whole cells at their own columns, parts of cells at places of their own. */
final class SliceIntegral {
    private SliceIntegral() { }

    static TwoOrders of(SliceRows rows, GirthRange range) {
        return sum(rows, range, (u, p) -> p[6], rows::density);
    }

    /** Of the height above the base times the surface. */
    static TwoOrders heights(SliceRows rows, GirthRange range) {
        return sum(rows, range, (u, p) -> p[6] * p[1], index -> rows.density(index) * rows.z(index));
    }

    static TwoOrders of(Slice slice, SliceRows rows, GirthRange range, SurfaceFunction figure) {
        return sum(rows, range, (u, p) -> p[6] * figure.at(slice.place(range.stretch(), u), slice.point(range.stretch(), u)),
                null);
    }

    private interface Weighted {
        double at(double u, double[] p);
    }

    /** @param known the figure at a column of the loft; null where columns do not tell it */
    private static TwoOrders sum(SliceRows rows, GirthRange range, Weighted figure, IntToDoubleFunction known) {
        int cells = rows.grid().cells();
        double high = 0, low = 0;
        double[] p = new double[7];
        for (int c = 0; c < cells; c++) {
            double from = Math.max(range.fromU(), (double) c / cells);
            double to = Math.min(range.toU(), (c + 1.0) / cells);
            if (from >= to)
                continue;
            boolean whole = from == (double) c / cells && to == (c + 1.0) / cells;
            for (int k = 0; k < Kronrod.SIZE; k++) {
                double value;
                if (whole && known != null) {
                    value = known.applyAsDouble(rows.index(range.stretch(), c * UGrid.PER_CELL + 1 + k));
                } else {
                    double u = from + (to - from) * Kronrod.node(k);
                    rows.at(range.stretch(), u, p);
                    value = figure.at(u, p);
                }
                high += Kronrod.high(k) * (to - from) * value;
                low += Kronrod.low(k) * (to - from) * value;
            }
        }
        return new TwoOrders(high, low);
    }
}
