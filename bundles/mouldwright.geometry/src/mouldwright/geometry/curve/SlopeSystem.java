package mouldwright.geometry.curve;

/** The tridiagonal equations for the slopes of a cubic spline at its knots, factored once and solved for many columns.
 *  Source: C. de Boor, A Practical Guide to Splines, chapter IV (slopes as unknowns). */
final class SlopeSystem {
    private final double[] step;
    private final EndCondition start;
    private final EndCondition end;
    private final double[] lower;
    private final double[] diagonal;
    private final double[] upper;

    SlopeSystem(double[] knots, EndCondition start, EndCondition end) {
        int n = knots.length;
        this.start = start;
        this.end = end;
        step = new double[n - 1];
        for (int i = 0; i + 1 < n; i++)
            step[i] = knots[i + 1] - knots[i];
        lower = new double[n];
        diagonal = new double[n];
        upper = new double[n];
        for (int i = 1; i + 1 < n; i++) {
            lower[i] = step[i];
            diagonal[i] = 2 * (step[i - 1] + step[i]);
            upper[i] = step[i - 1];
        }
        endRows();
        for (int i = 1; i < n; i++) {                   // elimination; the factor is kept in place of the lower band
            lower[i] /= diagonal[i - 1];
            diagonal[i] -= lower[i] * upper[i - 1];
        }
    }

    private void endRows() {
        int last = diagonal.length - 1;
        if (parabola()) {
            lower[1] = upper[1] = 0;
            diagonal[1] = 1;
        }
        switch (start) {
            case LEVEL -> diagonal[0] = 1;
            case STRAIGHT -> { diagonal[0] = 2; upper[0] = 1; }
            case NOT_A_KNOT -> {
                diagonal[0] = low() ? 1 : step[1];
                upper[0] = low() ? 1 : step[0] + step[1];
            }
        }
        switch (end) {
            case LEVEL -> diagonal[last] = 1;
            case STRAIGHT -> { diagonal[last] = 2; lower[last] = 1; }
            case NOT_A_KNOT -> {
                boolean line = last == 1 && start == EndCondition.NOT_A_KNOT;
                diagonal[last] = low() ? 1 : step[last - 2];
                lower[last] = line ? 0 : low() ? 1 : step[last - 2] + step[last - 1];
                if (line) {
                    upper[0] = 0;
                }
            }
        }
    }

    /** Three knots with both ends free: one parabola. */
    private boolean parabola() {
        return diagonal.length == 3 && start == EndCondition.NOT_A_KNOT && end == EndCondition.NOT_A_KNOT;
    }

    /** So few knots that a free end can only ask for a parabola over its span. */
    private boolean low() {
        return diagonal.length == 2 || parabola();
    }

    /** Slopes for rows of values, one row per knot. */
    double[][] slopes(double[][] rows) {
        int n = rows.length;
        double[][] d = new double[n][rows[0].length];
        for (int i = 0; i < n; i++)
            for (int c = 0; c < d[i].length; c++)
                d[i][c] = right(rows, i, c) - (i == 0 ? 0 : lower[i] * d[i - 1][c]);
        for (int c = 0; c < d[0].length; c++)
            d[n - 1][c] /= diagonal[n - 1];
        for (int i = n - 2; i >= 0; i--)
            for (int c = 0; c < d[i].length; c++)
                d[i][c] = (d[i][c] - upper[i] * d[i + 1][c]) / diagonal[i];
        return d;
    }

    private double right(double[][] rows, int i, int c) {
        int last = rows.length - 1;
        if (i == 0)
            return end(start, rate(rows, 0, c), last > 1 ? rate(rows, 1, c) : 0, step[0], last > 1 ? step[1] : 0);
        if (i == last)
            return end(end, rate(rows, last - 1, c), last > 1 ? rate(rows, last - 2, c) : 0, step[last - 1],
                    last > 1 ? step[last - 2] : 0);
        double weighted = step[i] * rate(rows, i - 1, c) + step[i - 1] * rate(rows, i, c);
        return parabola() ? weighted / (step[i - 1] + step[i]) : 3 * weighted;
    }

    private double end(EndCondition condition, double outer, double inner, double h, double k) {
        return switch (condition) {
            case LEVEL -> 0;
            case STRAIGHT -> 3 * outer;
            case NOT_A_KNOT -> bothFreeLine() ? outer
                    : low() ? 2 * outer : ((h + 2 * (h + k)) * k * outer + h * h * inner) / (h + k);
        };
    }

    private boolean bothFreeLine() {
        return diagonal.length == 2 && start == EndCondition.NOT_A_KNOT && end == EndCondition.NOT_A_KNOT;
    }

    private double rate(double[][] rows, int span, int c) {
        return (rows[span + 1][c] - rows[span][c]) / step[span];
    }
}
