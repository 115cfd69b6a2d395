package mouldwright.units;

import java.util.regex.Matcher;

/**
 * What was understood of a number as it stands in the text: digits, at most one decimal mark, and an exponent that
 * belongs to the number ({@code 1.5e-3}).
 */
public sealed interface WrittenNumber {

    /**
     * A usable number.
     *
     * @param value        the number, finite
     * @param decimalComma whether it was written with a comma, which is read but wants reporting
     * @param withPoint    the same number as it ought to be written
     */
    record Value(double value, boolean decimalComma, String withPoint) implements WrittenNumber { }

    /**
     * No usable number.
     *
     * @param message what is wrong with it
     */
    record Rejected(String message) implements WrittenNumber { }

    /** Reads a number with an optional sign; never throws. */
    static WrittenNumber parse(String text) {
        Matcher match = NumberSyntax.NUMBER.matcher(text);
        if (!match.matches()) {
            return new Rejected("\"" + text + "\" is not a number");
        }
        boolean comma = text.indexOf(',') >= 0;
        String withPoint = text.replace(',', '.');
        double value = Double.parseDouble(withPoint);
        if (!Double.isFinite(value)) {
            return new Rejected(text + " is too large to work with");
        }
        if (value == 0 && NumberSyntax.SOME_DIGIT.matcher(withPoint).lookingAt()) {
            return new Rejected(text + " is too small to work with");
        }
        return new Value(value + 0.0, comma, withPoint);
    }
}
