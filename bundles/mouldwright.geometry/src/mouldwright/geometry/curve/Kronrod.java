package mouldwright.geometry.curve;

/** Gauss rule of 3 points inside Kronrod's of 7, on 0 to 1: two orders from the same places.
 *  Source: A. S. Kronrod 1964; the nodes as tabulated by T. N. L. Patterson, Math. Comp. 22 (1968). */
public final class Kronrod {
    /** Number of places. */
    public static final int SIZE = 7;

    private static final double[] X = { 0.960491268708020283423507092629080, 0.774596669241483377035853079956480,
        0.434243749346802558002071502844628 };
    private static final double[] HIGH = { 0.104656226026467265193823857192073, 0.268488089868333440728569280666710,
        0.401397414775962222905051818618432, 0.450916538658474142345110087045571 };
    private static final double[] LOW = { 0, 5.0 / 9, 0, 8.0 / 9 };

    private Kronrod() { }

    /** A place. @param i 0 to 6, increasing */
    public static double node(int i) {
        return i == 3 ? 0.5 : i < 3 ? (1 - X[i]) / 2 : (1 + X[6 - i]) / 2;
    }

    /** Weight of the higher order. */
    public static double high(int i) {
        return HIGH[Math.min(i, 6 - i)] / 2;
    }

    /** Weight of the lower order, 0 where it has no place. */
    public static double low(int i) {
        return LOW[Math.min(i, 6 - i)] / 2;
    }
}
