package mouldwright.process;

import java.util.function.DoubleUnaryOperator;

/**
 * A figure with its spread.
 *
 * @param low    what it can fall to
 * @param likely what to reckon with
 * @param high   what it can rise to; {@code low <= likely <= high}
 */
public record Range(double low, double likely, double high) {

    /** Refuses figures out of order. */
    public Range {
        if (!(low <= likely && likely <= high) || !Double.isFinite(low) || !Double.isFinite(high)) {
            throw new IllegalArgumentException("low, likely, high out of order: " + low + ", " + likely + ", " + high);
        }
    }

    /** A figure without a spread. */
    public static Range exactly(double value) {
        return new Range(value, value, value);
    }

    /** All three figures times a factor, not negative. */
    public Range times(double factor) {
        Require.notNegative(factor, "factor");
        return new Range(low * factor, likely * factor, high * factor);
    }

    /** All three figures through a formula that rises or falls throughout; a falling one swaps low and high. */
    public Range through(DoubleUnaryOperator formula) {
        double a = formula.applyAsDouble(low);
        double b = formula.applyAsDouble(high);
        return new Range(Math.min(a, b), formula.applyAsDouble(likely), Math.max(a, b));
    }
}
