package mouldwright.geometry.curve;

/** A curve whose two coordinates are the two columns of a spline.
 *
 *  @param spline y and z */
public record SplineCurve(CubicSpline spline) implements PlaneCurve {
    @Override public double[] breaks() {
        double[] b = new double[spline.size()];
        for (int i = 0; i < b.length; i++)
            b[i] = spline.knot(i);
        return b;
    }

    @Override public void at(double t, double[] out) {
        spline.pair(t, out);
    }
}
