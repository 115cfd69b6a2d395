package mouldwright.exchange.drawing;

import java.util.Arrays;

/** A B-spline, rational where its weights differ. Evaluated by de Boor's algorithm (C. de Boor, A Practical Guide to Splines, 1978), on
 *  homogeneous coordinates. */
final class Spline implements Curve {

    private final int degree;
    private final double[] knots;
    /** x, y and weight of each control point, the first two times the weight. */
    private final double[][] control;

    /** @param degree 1 or more
     *  @param knots not falling, as many as control points and degree and one, with a span inside that is not empty
     *  @param x of control points @param y of control points @param weights positive */
    Spline(int degree, double[] knots, double[] x, double[] y, double[] weights) {
        this.degree = degree;
        this.knots = knots.clone();
        control = new double[x.length][];
        for (int i = 0; i < x.length; i++)
            control[i] = new double[] { x[i] * weights[i], y[i] * weights[i], weights[i] };
    }

    /** What keeps figures from being a spline, in words; empty if nothing does. */
    static String refusal(int degree, double[] knots, int points, double[] weights) {
        if (degree < 1 || degree > 25)
            return "it has the degree " + degree;
        if (points < degree + 1)
            return "it has " + points + " control points, its degree of " + degree + " wants " + (degree + 1);
        if (knots.length != points + degree + 1)
            return "it has " + knots.length + " knots, " + points + " control points want " + (points + degree + 1);
        for (int i = 1; i < knots.length; i++)
            if (knots[i] < knots[i - 1])
                return "its knots fall from " + knots[i - 1] + " to " + knots[i];
        if (!(knots[degree] < knots[points]))
            return "all its knots are alike";
        return Arrays.stream(weights).allMatch(weight -> weight > 0) ? "" : "a weight of it is not positive";
    }

    @Override
    public Point at(double t) {
        double from = knots[degree], to = knots[control.length];
        double u = t == 1 ? to : from + t * (to - from);
        int span = degree;
        while (span + 1 < control.length && u >= knots[span + 1])
            span++;
        double[][] d = new double[degree + 1][];
        for (int j = 0; j <= degree; j++)
            d[j] = control[span - degree + j].clone();
        for (int r = 1; r <= degree; r++)
            for (int j = degree; j >= r; j--) {
                double low = knots[span - degree + j], high = knots[span + 1 + j - r];
                double share = high > low ? (u - low) / (high - low) : 0;
                for (int k = 0; k < 3; k++)
                    d[j][k] = (1 - share) * d[j - 1][k] + share * d[j][k];
            }
        return new Point(d[degree][0] / d[degree][2], d[degree][1] / d[degree][2]);
    }

    /** By a short step inward: control points may coincide at an end, where the derivative then says nothing. */
    @Override
    public Point direction(boolean atEnd) {
        Point end = at(atEnd ? 1 : 0);
        for (double step = 1e-5; step < 1; step *= 10) {
            Point inside = at(atEnd ? 1 - step : step);
            if (inside.distance(end) > 0)
                return atEnd ? end.minus(inside) : inside.minus(end);
        }
        return new Point(1, 0);
    }

    @Override
    public int pieces() {
        return Math.max(2, 2 * (control.length - degree));
    }
}
