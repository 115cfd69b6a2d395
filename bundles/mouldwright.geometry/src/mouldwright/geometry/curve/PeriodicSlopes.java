package mouldwright.geometry.curve;

/** Slopes of a closed cubic spline: a cyclic tridiagonal system, solved as a tridiagonal one with a correction of rank one
 *  (Sherman and Morrison). */
final class PeriodicSlopes {
    private PeriodicSlopes() { }

    static double[][] of(double[] knots, double[][] rows) {
        int n = knots.length - 1;                               // unknowns: the last knot is the first
        double[] h = new double[n];
        for (int i = 0; i < n; i++)
            h[i] = knots[i + 1] - knots[i];
        double[] lower = new double[n], diagonal = new double[n], upper = new double[n];
        for (int i = 0; i < n; i++) {
            double before = h[(i + n - 1) % n];
            lower[i] = h[i];
            diagonal[i] = 2 * (before + h[i]);
            upper[i] = before;
        }
        double[] correction = new double[n];
        double corner = -diagonal[0];
        double first = lower[0], last = upper[n - 1];           // the two corners of the cyclic matrix
        diagonal[0] -= corner;
        diagonal[n - 1] -= first * last / corner;
        correction[0] = corner;
        correction[n - 1] = last;
        double[] q = solve(lower, diagonal, upper, correction);
        double[][] slopes = new double[n + 1][rows[0].length];
        for (int c = 0; c < rows[0].length; c++) {
            double[] x = solve(lower, diagonal, upper, right(rows, h, c));
            double share = (x[0] + first / corner * x[n - 1]) / (1 + q[0] + first / corner * q[n - 1]);
            for (int i = 0; i < n; i++)
                slopes[i][c] = x[i] - share * q[i];
            slopes[n][c] = slopes[0][c];
        }
        return slopes;
    }

    private static double[] right(double[][] rows, double[] h, int c) {
        int n = h.length;
        double[] r = new double[n];
        for (int i = 0; i < n; i++) {
            int b = (i + n - 1) % n;
            double before = (rows[b + 1][c] - rows[b][c]) / h[b];
            double after = (rows[i + 1][c] - rows[i][c]) / h[i];
            r[i] = 3 * (h[i] * before + h[b] * after);
        }
        return r;
    }

    private static double[] solve(double[] lower, double[] diagonal, double[] upper, double[] right) {
        int n = right.length;
        double[] x = right.clone();
        double[] pivot = diagonal.clone();
        for (int i = 1; i < n; i++) {
            double factor = lower[i] / pivot[i - 1];
            pivot[i] -= factor * upper[i - 1];
            x[i] -= factor * x[i - 1];
        }
        x[n - 1] /= pivot[n - 1];
        for (int i = n - 2; i >= 0; i--)
            x[i] = (x[i] - upper[i] * x[i + 1]) / pivot[i];
        return x;
    }
}
