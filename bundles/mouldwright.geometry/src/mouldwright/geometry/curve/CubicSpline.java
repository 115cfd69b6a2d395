package mouldwright.geometry.curve;

import java.util.Arrays;

/** A cubic spline through rows of values: every column is a function of the same parameter with the same knots. */
public final class CubicSpline {
    private final double[] knots;
    private final double[][] values;
    private final double[][] slopes;

    private CubicSpline(double[] knots, double[][] values, double[][] slopes) {
        this.knots = knots;
        this.values = values;
        this.slopes = slopes;
    }

    /** A spline through rows. The arrays are kept, not copied.
     *  @param knots  strictly increasing, two at least
     *  @param values one row per knot, all of one length
     *  @param start  what it does at the first knot
     *  @param end    what it does at the last knot */
    public static CubicSpline through(double[] knots, double[][] values, EndCondition start, EndCondition end) {
        return new CubicSpline(knots, values, new SlopeSystem(knots, start, end).slopes(values));
    }

    /** Two splines side by side that share their knots, each column with its own end conditions.
     *  @param other a spline over equal knots */
    public CubicSpline beside(CubicSpline other) {
        double[][] v = new double[knots.length][];
        double[][] d = new double[knots.length][];
        for (int i = 0; i < knots.length; i++) {
            v[i] = joined(values[i], other.values[i]);
            d[i] = joined(slopes[i], other.slopes[i]);
        }
        return new CubicSpline(knots, v, d);
    }

    private static double[] joined(double[] a, double[] b) {
        double[] both = Arrays.copyOf(a, a.length + b.length);
        System.arraycopy(b, 0, both, a.length, b.length);
        return both;
    }

    /** A closed spline, whose last row repeats the first.
     *  @param knots  strictly increasing, four at least
     *  @param values one row per knot */
    public static CubicSpline periodic(double[] knots, double[][] values) {
        return new CubicSpline(knots, values, PeriodicSlopes.of(knots, values));
    }

    /** The same spline with values, slopes and knots times a factor. */
    public CubicSpline scaled(double factor) {
        double[] k = Arrays.stream(knots).map(t -> t * factor).toArray();
        double[][] v = new double[values.length][];
        for (int i = 0; i < v.length; i++)
            v[i] = Arrays.stream(values[i]).map(t -> t * factor).toArray();
        return new CubicSpline(k, v, slopes);
    }

    /** Number of knots. */
    public int size() { return knots.length; }

    /** A knot. */
    public double knot(int i) { return knots[i]; }

    /** Value of a column at a knot. */
    public double knotValue(int knot, int column) { return values[knot][column]; }

    /** Slope of a column at a knot. */
    public double knotSlope(int knot, int column) { return slopes[knot][column]; }

    /** The span a parameter lies in, 0 to size - 2; outside, the nearest. */
    public int span(double t) {
        int at = Arrays.binarySearch(knots, t);
        int span = at >= 0 ? at : -at - 2;
        return Math.clamp(span, 0, knots.length - 2);
    }

    /** All columns at a parameter, with their slopes.
     *  @param span  the span to evaluate, also outside it
     *  @param value filled with the values
     *  @param slope filled with the first derivatives */
    public void at(int span, double t, double[] value, double[] slope) {
        at(span, t, 0, values[span].length, value, slope);
    }

    /** Some columns at a parameter, with their slopes.
     *  @param span  the span to evaluate, also outside it
     *  @param first the first column
     *  @param count how many
     *  @param value filled with the values
     *  @param slope filled with the first derivatives */
    public void at(int span, double t, int first, int count, double[] value, double[] slope) {
        double h = knots[span + 1] - knots[span];
        double w = (t - knots[span]) / h;
        double m = 1 - w;
        double v0 = m * m * (1 + 2 * w), v1 = w * w * (3 - 2 * w);
        double d0 = h * w * m * m, d1 = -h * w * w * m;
        double r = 6 * w * m / h;
        double e0 = m * (1 - 3 * w), e1 = w * (3 * w - 2);
        double[] a = values[span], b = values[span + 1], p = slopes[span], q = slopes[span + 1];
        for (int k = 0; k < count; k++) {
            int c = first + k;
            value[k] = v0 * a[c] + v1 * b[c] + d0 * p[c] + d1 * q[c];
            slope[k] = r * (b[c] - a[c]) + e0 * p[c] + e1 * q[c];
        }
    }

    /** Value of one column. */
    public double value(double t, int column) {
        int i = span(t);
        double h = knots[i + 1] - knots[i];
        double w = (t - knots[i]) / h;
        double m = 1 - w;
        return m * m * (1 + 2 * w) * values[i][column] + w * w * (3 - 2 * w) * values[i + 1][column]
                + h * w * m * (m * slopes[i][column] - w * slopes[i + 1][column]);
    }

    /** First derivative of one column. */
    public double first(double t, int column) {
        int i = span(t);
        double h = knots[i + 1] - knots[i];
        double w = (t - knots[i]) / h;
        double m = 1 - w;
        return 6 * w * m / h * (values[i + 1][column] - values[i][column])
                + m * (1 - 3 * w) * slopes[i][column] + w * (3 * w - 2) * slopes[i + 1][column];
    }

    /** The first two columns with their first and second derivatives.
     *  @param out filled with both values, both first and both second derivatives */
    void pair(double t, double[] out) {
        int i = span(t);
        double h = knots[i + 1] - knots[i];
        double w = (t - knots[i]) / h;
        double m = 1 - w;
        for (int c = 0; c < 2; c++) {
            double a = values[i][c], b = values[i + 1][c], p = slopes[i][c], q = slopes[i + 1][c];
            double rate = (b - a) / h;
            out[c] = m * m * (1 + 2 * w) * a + w * w * (3 - 2 * w) * b + h * w * m * (m * p - w * q);
            out[2 + c] = 6 * w * m * rate + m * (1 - 3 * w) * p + w * (3 * w - 2) * q;
            out[4 + c] = (6 * (1 - 2 * w) * rate + (6 * w - 4) * p + (6 * w - 2) * q) / h;
        }
    }

    /** Second derivative of one column; at a knot that of the span after it. */
    public double second(double t, int column) {
        int i = span(t);
        double h = knots[i + 1] - knots[i];
        double w = (t - knots[i]) / h;
        double rate = (values[i + 1][column] - values[i][column]) / h;
        return (6 * (1 - 2 * w) * rate + (6 * w - 4) * slopes[i][column] + (6 * w - 2) * slopes[i + 1][column]) / h;
    }

    /** Whether a column rises all along; it may be level at a single place. */
    public boolean rises(int column) {
        for (int i = 0; i + 1 < knots.length; i++) {
            double rate = (values[i + 1][column] - values[i][column]) / (knots[i + 1] - knots[i]);
            if (!risesInSpan(rate, slopes[i][column], slopes[i + 1][column]))
                return false;
        }
        return true;
    }

    private static boolean risesInSpan(double rate, double before, double after) {
        if (!(rate > 0) || before < 0 || after < 0)
            return false;
        double bend = before + after - 2 * rate;                // half the coefficient of w^2 in the slope, over 3/2
        if (bend <= 0)
            return true;
        double w = (2 * before + after - 3 * rate) / (3 * bend);
        if (w <= 0 || w >= 1)
            return true;
        double m = 1 - w;
        return 6 * w * m * rate + m * (1 - 3 * w) * before + w * (3 * w - 2) * after > 0;
    }
}
