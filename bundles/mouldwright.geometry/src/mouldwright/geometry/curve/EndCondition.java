package mouldwright.geometry.curve;

/** What a cubic spline does at an end. */
public enum EndCondition {
    /** The outermost two spans are one cubic; with three knots a parabola, with two a line. */
    NOT_A_KNOT,
    /** No curvature: second derivative 0. */
    STRAIGHT,
    /** First derivative 0. */
    LEVEL
}
