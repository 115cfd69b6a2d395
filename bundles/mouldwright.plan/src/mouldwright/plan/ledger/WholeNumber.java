package mouldwright.plan.ledger;

/** Rounding up that is not fooled by the last bits of a double: 600 mm in lifts of 200 mm are three, not four. */
public final class WholeNumber {

    /** Excess over a whole number that is taken for rounding error of the figures, as a share of the figure. */
    private static final double NOISE = 1e-9;

    private WholeNumber() { }

    /** The least whole number not below a figure, but for rounding error. */
    public static double up(double figure) {
        return Math.ceil(figure - NOISE * Math.abs(figure)) + 0.0;
    }
}
