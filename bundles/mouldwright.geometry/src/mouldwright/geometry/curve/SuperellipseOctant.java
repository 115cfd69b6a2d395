package mouldwright.geometry.curve;

/** From the end of one semi-axis to where both coordinates, each over its semi-axis, are equal: p^N + q^N = 1 with q from 1
 *  down. The coordinate that keeps the derivatives finite is the parameter: p for N of 1 and more, q below (where the curve
 *  meets the axis as a cusp). The curve is (p, q); stretching and reversing make the other octants of it. */
public record SuperellipseOctant(double exponent) implements PlaneCurve {
    /** Where both coordinates are equal. */
    private double corner() {
        return Math.pow(0.5, 1 / exponent);
    }

    @Override public double[] breaks() {
        return exponent >= 1 ? new double[] { 0, corner() } : new double[] { -1, -corner() };
    }

    @Override public void at(double t, double[] out) {
        double s = Math.min(Math.abs(t), 1);
        double log = exponent * Math.log(s), power = Math.exp(log);
        double rest = power < 0.5 ? 1 - power : -Math.expm1(log);   // 1 - s^N without loss near 1
        double other = s == 0 ? 1 : Math.pow(rest, 1 / exponent);
        double first = rest == 0 ? (exponent < 1 ? 0 : Double.NEGATIVE_INFINITY)
                : -(s == 0 ? Math.pow(0, exponent - 1) : power / s) * other / rest;
        double low = Math.max(s, 1e-9);                             // below N = 2 the curvature has no limit at s = 0
        double second = rest == 0 ? 0 : -(exponent - 1) * (low > s ? Math.pow(low, exponent - 2) : power / (s * s)) * other / (rest * rest);
        if (exponent >= 1)
            fill(out, s, other, 1, first, 0, second);
        else                                                        // t = -q rises as q falls
            fill(out, other, s, -first, -1, second, 0);
    }

    private static void fill(double[] out, double p, double q, double dp, double dq, double ddp, double ddq) {
        out[0] = p;
        out[1] = q;
        out[2] = dp;
        out[3] = dq;
        out[4] = ddp;
        out[5] = ddq;
    }
}
