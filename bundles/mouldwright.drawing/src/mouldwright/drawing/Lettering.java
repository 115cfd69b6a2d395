package mouldwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** How much room words take in the font of our drawings, so that they can be laid out before anything is painted. */
public final class Lettering {

    /** A capital's height as a share of the font's size. */
    public static final double CAPITAL = 0.729;

    private static final String CUT_SHORT = "\u2026";

    private Lettering() { }

    /** The font is read when words are first measured: many commands never draw. */
    private static final class Loaded {
        static final FontWidths FONT = FontWidths.resource("/fonts/DejaVuSans.ttf");
    }

    /** mm across. @param height of a capital, mm */
    public static double width(String text, double height) {
        return text.codePoints().mapToDouble(Loaded.FONT::advance).sum() * height / CAPITAL;
    }

    /** The words as they are if they fit, else as many of their letters as do and three points.
     *  @param height of a capital, mm
     *  @param room   mm across */
    public static String fitted(String text, double height, double room) {
        if (width(text, height) <= room)
            return text;
        int[] letters = text.codePoints().toArray();
        for (int n = letters.length - 1; n > 0; n--) {
            String shorter = new String(letters, 0, n).stripTrailing() + CUT_SHORT;
            if (width(shorter, height) <= room)
                return shorter;
        }
        return width(CUT_SHORT, height) <= room ? CUT_SHORT : "";
    }

    /** The words in as many lines as they need; a word that is too long for a line is shortened.
     *  @param height of a capital, mm
     *  @param room   mm across */
    public static List<String> wrapped(String text, double height, double room) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (line.isEmpty() || width(longer, height) <= room)
                line = longer;
            else {
                lines.add(fitted(line, height, room));
                line = word;
            }
        }
        lines.add(fitted(line, height, room));
        return lines;
    }
}
