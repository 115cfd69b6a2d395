package mouldwright.geometry.loft;

/** One of the two sides of a station. */
public enum Side {
    /** Towards smaller x. */
    FORWARD(-1),
    /** Towards larger x. */
    AFT(1);

    private final int sign;

    Side(int sign) { this.sign = sign; }

    /** -1 forward, +1 aft. */
    public int sign() { return sign; }
}
