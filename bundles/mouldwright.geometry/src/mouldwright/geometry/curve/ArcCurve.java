package mouldwright.geometry.curve;

/** An arc of a circle by its angle from starboard towards up, radians.
 *
 *  @param y      centre, metres
 *  @param z      centre, metres
 *  @param radius metres
 *  @param low    lesser angle
 *  @param high   greater angle */
public record ArcCurve(double y, double z, double radius, double low, double high) implements PlaneCurve {
    @Override public double[] breaks() {
        return new double[] { low, high };
    }

    @Override public void at(double t, double[] out) {
        double c = radius * Math.cos(t), s = radius * Math.sin(t);
        out[0] = y + c;
        out[1] = z + s;
        out[2] = -s;
        out[3] = c;
        out[4] = -c;
        out[5] = -s;
    }
}
