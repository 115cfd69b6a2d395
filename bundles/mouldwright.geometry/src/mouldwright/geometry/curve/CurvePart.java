package mouldwright.geometry.curve;

/** A run along a curve.
 *
 *  @param curve the curve
 *  @param from  parameter where the run begins
 *  @param to    parameter where it ends; less than from when run backwards */
public record CurvePart(PlaneCurve curve, double from, double to) {
    /** The whole of a curve. */
    public static CurvePart whole(PlaneCurve curve) {
        double[] b = curve.breaks();
        return new CurvePart(curve, b[0], b[b.length - 1]);
    }

    /** The same run the other way. */
    public CurvePart reversed() {
        return new CurvePart(curve, to, from);
    }

    /** The same run stretched and shifted: y to breadth * y + shiftY, z to depth * z + shiftZ. */
    public CurvePart mapped(double breadth, double depth, double shiftY, double shiftZ) {
        return new CurvePart(new StretchedCurve(curve, breadth, depth, shiftY, shiftZ), from, to);
    }
}
