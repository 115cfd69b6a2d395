package mouldwright.units;

import java.util.regex.Pattern;

/** The shape of a written number. */
final class NumberSyntax {

    static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+([.,]\\d*)?|[.,]\\d+)([eE][+-]?\\d+)?");

    /** A figure other than 0 before any exponent, so that the number is not nothing. */
    static final Pattern SOME_DIGIT = Pattern.compile("[+-]?[0.]*[1-9]");

    private NumberSyntax() { }
}
