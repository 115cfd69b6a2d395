package mouldwright.drawing;

import java.io.IOException;
import java.io.InputStream;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The fonts of our papers, carried in each file so that it looks alike everywhere: DejaVu Sans, which may be embedded. */
public final class PdfFonts {

    /** A capital's height as a share of the font's size. */
    public static final double CAPITAL = Lettering.CAPITAL;

    private final PDFont plain;
    private final PDFont bold;

    /** Loads them for a document; only the letters used go into it. */
    public PdfFonts(PDDocument document) throws IOException {
        plain = load(document, "/fonts/DejaVuSans.ttf");
        bold = load(document, "/fonts/DejaVuSans-Bold.ttf");
    }

    private static PDFont load(PDDocument document, String name) throws IOException {
        try (InputStream font = PdfFonts.class.getResourceAsStream(name)) {
            if (font == null)
                throw new IOException("the font " + name + " is missing from the program");
            TrueTypeFont parsed = new TTFParser().parse(new RandomAccessReadBuffer(font));
            parsed.setEnableGsub(false); // letters drawn as one are not found by a search, and looking for them costs a quarter of the time of a page
            return PDType0Font.load(document, parsed, true);
        }
    }

    /** For reading. */
    public PDFont plain() {
        return plain;
    }

    /** For headings and for what must not be missed. */
    public PDFont bold() {
        return bold;
    }

    /** Letters the font has; others become a box. */
    public static String printable(PDFont font, String text) {
        StringBuilder result = new StringBuilder();
        text.codePoints().forEach(c -> result.append(has(font, c) ? Character.toString(c) : "\u25a1"));
        return result.toString();
    }

    private static boolean has(PDFont font, int c) {
        try {
            font.encode(Character.toString(c));
            return true;
        } catch (IOException | IllegalArgumentException e) {
            return false;
        }
    }

    /** mm across. @param size of the font, mm */
    public static double width(PDFont font, String text, double size) {
        try {
            return font.getStringWidth(printable(font, text)) / 1000 * size;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
