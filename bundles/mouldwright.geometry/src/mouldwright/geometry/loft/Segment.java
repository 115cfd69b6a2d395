package mouldwright.geometry.loft;

import mouldwright.geometry.curve.CubicSpline;
import mouldwright.geometry.curve.EndCondition;
import mouldwright.geometry.curve.Kronrod;

/** The loft between two creases: one spline along the body for every column, and one for x, by a common parameter. */
final class Segment {
    /** A pointed end whose x rises slower than this along the mean chord is a blunt one, level at its tip; the steepest cone
     *  it can be taken for has a half angle of 72 degrees. */
    private static final double BLUNT = 0.3;

    private final CubicSpline x;
    private final CubicSpline columns;
    private final boolean startPinched;
    private final boolean endPinched;

    private Segment(CubicSpline x, CubicSpline columns, boolean startPinched, boolean endPinched) {
        this.x = x;
        this.columns = columns;
        this.startPinched = startPinched;
        this.endPinched = endPinched;
    }

    /** @param xs   stations @param rows sampled sections @param lengths of every stretch at every station
     *  @param startPinched @param endPinched whether the end is a point or knife edge */
    static Segment through(double[] xs, double[][] rows, double[][] lengths, UGrid grid, boolean startPinched,
            boolean endPinched) {
        double[] knots = meanChords(xs, rows, lengths, grid);
        CubicSpline x = alongX(knots, xs, startPinched, endPinched);
        if (!x.rises(0)) {
            knots = xs;                                         // sections that wander: x itself is the parameter
            x = alongX(knots, xs, false, false);
        }
        return new Segment(x, CubicSpline.through(knots, rows, EndCondition.NOT_A_KNOT, EndCondition.NOT_A_KNOT),
                startPinched, endPinched);
    }

    private static CubicSpline alongX(double[] knots, double[] xs, boolean startPinched, boolean endPinched) {
        double[][] values = new double[xs.length][1];
        for (int i = 0; i < xs.length; i++)
            values[i][0] = xs[i];
        EndCondition free = EndCondition.NOT_A_KNOT;
        CubicSpline x = CubicSpline.through(knots, values, free, free);
        boolean startBlunt = startPinched && x.knotSlope(0, 0) < BLUNT;
        boolean endBlunt = endPinched && x.knotSlope(xs.length - 1, 0) < BLUNT;
        return startBlunt || endBlunt
                ? CubicSpline.through(knots, values, startBlunt ? EndCondition.LEVEL : free, endBlunt ? EndCondition.LEVEL : free)
                : x;
    }

    /** Mean distance from station to station through equal shares, each stretch weighted by its length. */
    private static double[] meanChords(double[] xs, double[][] rows, double[][] lengths, UGrid grid) {
        double[] knots = new double[xs.length];
        for (int i = 1; i < xs.length; i++) {
            double dx = xs[i] - xs[i - 1], sum = 0, weights = 0;
            for (int s = 0; s < lengths[i].length; s++) {
                double weight = lengths[i - 1][s] + lengths[i][s];
                sum += weight * meanChord(dx, rows[i - 1], rows[i], s, grid);
                weights += weight;
            }
            knots[i] = knots[i - 1] + sum / weights;
        }
        return knots;
    }

    private static double meanChord(double dx, double[] a, double[] b, int stretch, UGrid grid) {
        double sum = 0;
        int base = stretch * grid.columns();
        for (int cell = 0; cell < grid.cells(); cell++)
            for (int k = 0; k < Kronrod.SIZE; k++) {
                int at = (base + cell * UGrid.PER_CELL + 1 + k) * Sampling.FIGURES;
                double dy = b[at] - a[at], dz = b[at + 1] - a[at + 1];
                sum += Kronrod.high(k) * Math.sqrt(dx * dx + dy * dy + dz * dz);
            }
        return sum / grid.cells();
    }

    Segment scaled(double factor) {
        return new Segment(x.scaled(factor), columns.scaled(factor), startPinched, endPinched);
    }

    int spans() { return x.size() - 1; }

    double stationX(int knot) { return x.knotValue(knot, 0); }

    double startX() { return x.knotValue(0, 0); }

    double endX() { return x.knotValue(x.size() - 1, 0); }

    CubicSpline columns() { return columns; }

    double parameter(int span, double w) {
        return x.knot(span) + w * (x.knot(span + 1) - x.knot(span));
    }

    double x(double v) { return x.value(v, 0); }

    double slope(double v) { return x.first(v, 0); }

    /** +1 or -1 where a pinched end lies at this parameter: the way into the body; else 0. */
    int wayIn(double v) {
        if (startPinched && v <= x.knot(0))
            return 1;
        return endPinched && v >= x.knot(x.size() - 1) ? -1 : 0;
    }

    /** The span an x lies in. */
    int spanAt(double at, boolean forward) {
        int span = 0;
        while (span + 1 < spans() && (forward ? at > x.knotValue(span + 1, 0) : at >= x.knotValue(span + 1, 0)))
            span++;
        return span;
    }

    /** Share of a span's parameter at an x inside it. */
    double share(int span, double at) {
        double low = 0, high = 1, from = x.knotValue(span, 0), to = x.knotValue(span + 1, 0);
        if (at <= from)
            return 0;
        if (at >= to)
            return 1;
        double w = (at - from) / (to - from), width = x.knot(span + 1) - x.knot(span);
        for (int round = 0; round < 100; round++) {
            double v = parameter(span, w);
            double miss = x(v) - at;
            if (Math.abs(miss) <= 1e-15 * (Math.abs(at) + to - from))
                return w;
            if (miss > 0)
                high = w;
            else
                low = w;
            double next = w - miss / (slope(v) * width);
            if (Math.abs(next - w) < 1e-15)
                return w;
            w = next > low && next < high ? next : 0.5 * (low + high);
        }
        return w;
    }
}
