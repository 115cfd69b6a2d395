package mouldwright.exchange.drawing;

/** Where curves cross the centreline. */
final class Crossings {

    private static final int HALVINGS = 60;

    private Crossings() { }

    /** The parameter at which a curve crosses x = 0 between two others; not a number if it stays on one side. */
    static double centreline(Curve curve, double from, double to) {
        double a = curve.at(from).x(), b = curve.at(to).x();
        if (a == 0)
            return from;
        if (a > 0 == b > 0 && b != 0)
            return Double.NaN;
        double low = from, high = to;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (curve.at(middle).x() > 0 == a > 0)
                low = middle;
            else
                high = middle;
        }
        return b == 0 ? to : 0.5 * (low + high);
    }
}
