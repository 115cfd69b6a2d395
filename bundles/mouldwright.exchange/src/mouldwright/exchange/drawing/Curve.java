package mouldwright.exchange.drawing;

/** A smooth piece of a drawn line, by a parameter from 0 to 1, in the drawing's units. */
public sealed interface Curve permits Straight, Bow, Oval, Spline, FitSpline, Reversed, Part, Mirrored {

    /** The place at a share of the parameter. */
    Point at(double t);

    /** A direction along the curve at an end, of any length. */
    Point direction(boolean atEnd);

    /** Into how many equal shares of the parameter it is cut before one looks closer. */
    int pieces();

    /** Where it begins. */
    default Point start() {
        return at(0);
    }

    /** Where it ends. */
    default Point end() {
        return at(1);
    }

    /** The same curve from its end. */
    default Curve reversed() {
        return new Reversed(this);
    }
}
