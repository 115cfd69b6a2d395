package mouldwright.drawing;

/** A part of a path, from where the one before ended. */
public sealed interface Stroke {

    /** Where it ends. */
    Spot end();

    /** A straight line. */
    record Line(Spot end) implements Stroke { }

    /** Part of a circle. @param bulge tangent of a quarter of the angle it turns through, positive to the left, as DXF has it */
    record Arc(Spot end, double bulge) implements Stroke { }

    /** A cubic Bézier curve. @param first @param second its control points */
    record Curve(Spot first, Spot second, Spot end) implements Stroke { }
}
