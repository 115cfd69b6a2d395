package mouldwright.report;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as files carry them. */
final class Numbers {

    private Numbers() { }

    /** The shortest text that reads back as the same double, without an exponent where it stays short, without a trailing {@code .0}.
     *  @throws IllegalArgumentException if it is not finite: such a figure never leaves the engine */
    static String text(double number) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("not a number to write: " + number);
        }
        if (number == 0) {
            return "0";
        }
        double size = Math.abs(number);
        BigDecimal shortest = new BigDecimal(Double.toString(number)).stripTrailingZeros();
        return size >= 1e-6 && size < 1e15 ? shortest.toPlainString() : shortest.toString();
    }

    /** A number with a fixed count of decimals, halves away from zero, never {@code -0}.
     *  @throws IllegalArgumentException if it is not finite */
    static String fixed(double number, int decimals) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("not a number to write: " + number);
        }
        BigDecimal rounded = new BigDecimal(Double.toString(number)).setScale(decimals, RoundingMode.HALF_UP);
        return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
    }
}
