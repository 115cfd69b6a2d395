package mouldwright.geometry.curve;

/** Lobatto's rule of 4 points inside Kronrod's extension of 7, on 0 to 1: two orders from the same places, both ends among them.
 *  Exact for polynomials up to the fifth and the ninth degree. Source: W. Gander and W. Gautschi, Adaptive quadrature revisited,
 *  BIT 40 (2000). */
public final class Lobatto {
    /** Number of places. */
    public static final int SIZE = 7;

    private static final double[] X = { 0, (1 - Math.sqrt(2.0 / 3)) / 2, (1 - Math.sqrt(0.2)) / 2, 0.5 };
    private static final double[] HIGH = { 77.0 / 2940, 432.0 / 2940, 625.0 / 2940, 672.0 / 2940 };
    private static final double[] LOW = { 1.0 / 12, 0, 5.0 / 12, 0 };

    private Lobatto() { }

    /** A place. @param i 0 to 6, increasing: 0 is the start, 6 the end */
    public static double node(int i) {
        return i <= 3 ? X[i] : 1 - X[6 - i];
    }

    /** Weight of the higher order. */
    public static double high(int i) {
        return HIGH[Math.min(i, 6 - i)];
    }

    /** Weight of the lower order, 0 where it has no place. */
    public static double low(int i) {
        return LOW[Math.min(i, 6 - i)];
    }
}
