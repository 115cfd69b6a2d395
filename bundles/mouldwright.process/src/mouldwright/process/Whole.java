package mouldwright.process;

/** Counting: how many whole lifts, pieces, pots or layers something takes. */
final class Whole {

    /** 0.9 / 0.3 comes out a hair over 3 in doubles; a billionth of a lift is rounding, not a fourth lift. */
    private static final double ROUNDING = 1e-9;

    private Whole() { }

    /** The least whole number, at least 1, of parts of {@code each} that make up {@code total}. */
    static int count(double total, double each, String what) {
        double parts = Require.notNegative(total, what) / Require.positive(each, "limit of " + what);
        double whole = Math.max(1, Math.ceil(parts * (1 - ROUNDING)));
        if (whole > 1_000_000) {
            throw new IllegalArgumentException(what + " takes more than a million parts: " + total + " by " + each);
        }
        return (int) whole;
    }
}
