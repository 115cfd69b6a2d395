package mouldwright.drawing.subject;

import java.util.Locale;

/** Figures as they stand on drawings, each with its unit. */
final class Said {

    private static final double MM = 1000;

    private Said() { }

    /** A length to the whole millimetre. @param metres it is */
    static String mm(double metres) {
        return figure(metres * MM, 0) + " mm";
    }

    /** A small length to a tenth of a millimetre. @param metres it is */
    static String fine(double metres) {
        return figure(metres * MM, 1) + " mm";
    }

    /** A volume. @param cubicMetres it is */
    static String litres(double cubicMetres) {
        return figure(cubicMetres * 1000, cubicMetres < 0.01 ? 2 : 1) + " l";
    }

    /** A mass in grams. @param kilograms it is */
    static String grams(double kilograms) {
        return figure(kilograms * 1000, 0) + " g";
    }

    /** With a number of decimals and a point. */
    static String figure(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }
}
