package mouldwright.geometry.loft;

import java.util.Arrays;

/** Divides a part of a stretch into chords: from the coarse to the fine by the columns in between, and beyond them by the
 *  cubic between two columns. */
final class SliceChords {
    private static final int DEEPEST = 10;

    private final SliceRows rows;
    private final double tolerance;
    private int stretch;
    private double[] kept;
    private int count;

    SliceChords(SliceRows rows, double tolerance) {
        this.rows = rows;
        this.tolerance = tolerance;
    }

    double[] places(GirthRange range) {
        stretch = range.stretch();
        int columns = rows.grid().columns(), size = 0;
        double[] grid = new double[columns + 2];
        double[][] at = new double[columns + 2][];
        grid[size++] = range.fromU();
        for (int c = 0; c < columns; c++)
            if (rows.grid().u(c) > range.fromU() && rows.grid().u(c) < range.toU()) {
                int index = rows.index(stretch, c);
                at[size] = new double[] { rows.y(index), rows.z(index) };
                grid[size++] = rows.grid().u(c);
            }
        grid[size++] = range.toU();
        at[0] = place(range.fromU());
        at[size - 1] = place(range.toU());
        kept = new double[size];
        count = 0;
        keep(range.fromU());
        divide(grid, at, 0, size - 1);
        return Arrays.copyOf(kept, count);
    }

    private double[] place(double u) {
        double[] place = new double[7];
        rows.at(stretch, u, place);
        return place;
    }

    private void keep(double u) {
        if (count == kept.length)
            kept = Arrays.copyOf(kept, 2 * count);
        kept[count++] = u;
    }

    private void divide(double[] grid, double[][] at, int from, int to) {
        int worst = -1;
        double most = tolerance * tolerance;
        for (int i = from + 1; i < to; i++) {
            double off = off(at[from], at[to], at[i]);
            if (off > most) {
                most = off;
                worst = i;
            }
        }
        if (worst >= 0) {
            divide(grid, at, from, worst);
            divide(grid, at, worst, to);
        } else if (to == from + 1) {
            refine(grid[from], grid[to], at[from], at[to], 0);
        } else {
            keep(grid[to]);
        }
    }

    private void refine(double from, double to, double[] a, double[] b, int depth) {
        double middle = 0.5 * (from + to);
        double[] m = place(middle);
        if (depth >= DEEPEST || off(a, b, m) <= tolerance * tolerance) {
            keep(to);
            return;
        }
        refine(from, middle, a, m, depth + 1);
        refine(middle, to, m, b, depth + 1);
    }

    /** Square of how far m is off the chord from a to b. */
    private static double off(double[] a, double[] b, double[] m) {
        double y = b[0] - a[0], z = b[1] - a[1], square = y * y + z * z;
        double my = m[0] - a[0], mz = m[1] - a[1], from = my * my + mz * mz;
        if (square == 0)
            return from;
        double along = my * y + mz * z, across = y * mz - z * my;
        if (along < 0)
            return from;
        if (along > square) {
            double by = m[0] - b[0], bz = m[1] - b[1];
            return by * by + bz * bz;
        }
        return across * across / square;
    }
}
