package mouldwright.geometry.loft;

import java.util.ArrayList;
import java.util.List;

/** Divides a part of a stretch into chords: from the coarse to the fine by the columns in between, and beyond them by the
 *  cubic between two columns. */
final class SliceChords {
    private static final int DEEPEST = 10;

    private final SliceRows rows;
    private final double tolerance;
    private int stretch;

    SliceChords(SliceRows rows, double tolerance) {
        this.rows = rows;
        this.tolerance = tolerance;
    }

    double[] places(GirthRange range) {
        stretch = range.stretch();
        List<Double> grid = new ArrayList<>();
        grid.add(range.fromU());
        for (int c = 0; c < rows.grid().columns(); c++)
            if (rows.grid().u(c) > range.fromU() && rows.grid().u(c) < range.toU())
                grid.add(rows.grid().u(c));
        grid.add(range.toU());
        double[][] at = new double[grid.size()][7];
        for (int i = 0; i < at.length; i++)
            rows.at(stretch, grid.get(i), at[i]);
        List<Double> kept = new ArrayList<>();
        kept.add(range.fromU());
        divide(grid, at, 0, at.length - 1, kept);
        return kept.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private void divide(List<Double> grid, double[][] at, int from, int to, List<Double> kept) {
        int worst = -1;
        double most = tolerance;
        for (int i = from + 1; i < to; i++) {
            double off = off(at[from], at[to], at[i]);
            if (off > most) {
                most = off;
                worst = i;
            }
        }
        if (worst >= 0) {
            divide(grid, at, from, worst, kept);
            divide(grid, at, worst, to, kept);
        } else if (to == from + 1) {
            refine(grid.get(from), grid.get(to), at[from], at[to], 0, kept);
        } else {
            kept.add(grid.get(to));
        }
    }

    private void refine(double from, double to, double[] a, double[] b, int depth, List<Double> kept) {
        double middle = 0.5 * (from + to);
        double[] m = new double[7];
        rows.at(stretch, middle, m);
        if (depth >= DEEPEST || off(a, b, m) <= tolerance) {
            kept.add(to);
            return;
        }
        refine(from, middle, a, m, depth + 1, kept);
        refine(middle, to, m, b, depth + 1, kept);
    }

    private static double off(double[] a, double[] b, double[] m) {
        double y = b[0] - a[0], z = b[1] - a[1], length = Math.hypot(y, z);
        double my = m[0] - a[0], mz = m[1] - a[1];
        if (length == 0)
            return Math.hypot(my, mz);
        double along = (my * y + mz * z) / length;
        double beyond = along < 0 ? -along : Math.max(0, along - length);
        return Math.hypot(Math.abs(y * mz - z * my) / length, beyond);
    }
}
