package mouldwright.drawing;

import java.util.Locale;

/** Figures as drawing files write them: with a point, no exponent, and no more digits than tell apart. */
final class Figures {

    private Figures() { }

    /** To a ten-thousandth of a millimetre. */
    static String of(double value) {
        String text = String.format(Locale.ROOT, "%.4f", value);
        int end = text.length();
        while (text.charAt(end - 1) == '0')
            end--;
        if (text.charAt(end - 1) == '.')
            end--;
        String cut = text.substring(0, end);
        return cut.equals("-0") ? "0" : cut;
    }
}
