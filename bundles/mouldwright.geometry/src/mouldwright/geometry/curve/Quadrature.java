package mouldwright.geometry.curve;

/** Gauss and Legendre's rule of 8 points, on 0 to 1. Source: Abramowitz and Stegun, table 25.4. */
final class Quadrature {
    static final int SIZE = 8;
    private static final double[] X = { 0.960289856497536231683560868569, 0.796666477413626739591553936476,
        0.525532409916328985817739049189, 0.183434642495649804939476142360 };
    private static final double[] W = { 0.101228536290376259152531354310, 0.222381034453374470544355994426,
        0.313706645877887287337962201987, 0.362683783378361982965150449277 };

    private Quadrature() { }

    static double node(int i) {
        return i < 4 ? (1 - X[i]) / 2 : (1 + X[7 - i]) / 2;
    }

    static double weight(int i) {
        return W[Math.min(i, 7 - i)] / 2;
    }
}
