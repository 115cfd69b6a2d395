package mouldwright.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import mouldwright.drawing.PdfFonts;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** How words run on a page: what can be printed of them, how wide that is, and where a line ends. Widths in points. */
final class PdfLetters {

    private final PdfFonts fonts;
    private final Map<String, String> printable = new HashMap<>();

    PdfLetters(PdfFonts fonts) {
        this.fonts = fonts;
    }

    /** How wide words are, points. */
    double width(String words, double points, boolean bold) {
        try {
            return font(bold).getStringWidth(printable(words)) / 1000 * points;
        } catch (IOException e) {
            throw new UncheckedIOException("memory refused to be read", e);
        }
    }

    PDFont font(boolean bold) {
        return bold ? fonts.bold() : fonts.plain();
    }

    /** Words with what the fonts have no letters for replaced. */
    String printable(String words) {
        return printable.computeIfAbsent(words, text -> PdfFonts.printable(fonts.plain(), Printable.of(text)));
    }

    /** Words in lines of a width; a word wider than that is broken. One line at least. */
    List<String> lines(String words, double width, double points, boolean bold) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, points, bold) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (width(line, points, bold) > width && line.length() > 1) {
                int fits = line.length() - 1;
                while (fits > 1 && width(line.substring(0, fits), points, bold) > width) {
                    fits--;
                }
                lines.add(line.substring(0, fits));
                line = line.substring(fits);
            }
        }
        lines.add(line);
        return lines;
    }

    /** Words shortened with dots where they are wider than a width. */
    String fitting(String words, double width, double points, boolean bold) {
        if (width(words, points, bold) <= width) {
            return words;
        }
        int fits = words.length();
        while (fits > 0 && width(words.substring(0, fits) + "\u2026", points, bold) > width) {
            fits--;
        }
        return words.substring(0, fits).stripTrailing() + "\u2026";
    }
}
