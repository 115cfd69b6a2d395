package mouldwright.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Palette;
import mouldwright.drawing.PdfFonts;
import mouldwright.drawing.PdfPainter;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;

/**
 * Pages of a PDF that are written on by places in points (1/72 inch) from the upper left corner. The fonts go into the file. The same writing gives the same
 * bytes.
 */
final class PdfSheet {

    /** Ink and grounds: dark ink, one blue, one sand, and greys; told apart in print without colour too. */
    enum Tint {
        INK(0x23241f), SOFT(0x5c5a50), LINE(0xbdb8aa), WASH(0xf4eedf), BLUE(0x1f4e79), SAND(0xa8854a), PAPER(0xffffff);

        private final int colour;

        Tint(int colour) {
            this.colour = colour;
        }

        private float part(int shift) {
            return (colour >> shift & 0xff) / 255f;
        }
    }

    /** Where letters would be drawn as one, and a search for the word would miss it. */
    private static final String LIGATURE = "(?<=f)(?=[fil])";

    private final PDDocument document = new PDDocument();
    private final PDDocumentOutline outline = new PDDocumentOutline();
    private final PDRectangle size;
    private final PdfFonts fonts;
    private final Map<String, String> printable = new HashMap<>();
    private PDPageContentStream stream;

    /** @param title of the document, as viewers show it */
    PdfSheet(String title, PdfPaper paper) {
        try {
            this.size = new PDRectangle((float) paper.width(), (float) paper.height());
            document.setDocumentId(1L);
            document.getDocumentInformation().setTitle(title);
            document.getDocumentInformation().setProducer("Mouldwright");
            document.getDocumentCatalog().setLanguage("en");
            PDViewerPreferences preferences = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
            preferences.setDisplayDocTitle(true);
            document.getDocumentCatalog().setViewerPreferences(preferences);
            document.getDocumentCatalog().setDocumentOutline(outline);
            this.fonts = new PdfFonts(document);
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    private static UncheckedIOException unwritable(IOException e) {
        return new UncheckedIOException("memory refused to be written", e);
    }

    double width() {
        return size.getWidth();
    }

    double height() {
        return size.getHeight();
    }

    int pages() {
        return document.getNumberOfPages();
    }

    /** Begins a page. */
    void page() {
        try {
            close();
            PDPage page = new PDPage(size);
            document.addPage(page);
            stream = new PDPageContentStream(document, page);
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    /** Goes back to a page that is written already.
     *  @param number from 0 */
    void turnTo(int number) {
        try {
            close();
            stream = new PDPageContentStream(document, document.getPage(number), PDPageContentStream.AppendMode.APPEND, true, true);
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    private void close() throws IOException {
        if (stream != null) {
            stream.close();
        }
    }

    /** Names this place of this page in the list of contents.
     *  @param y of its upper edge */
    void bookmark(String words, double y) {
        PDPageXYZDestination place = new PDPageXYZDestination();
        place.setPage(document.getPage(document.getNumberOfPages() - 1));
        place.setTop((int) (height() - y));
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(words);
        item.setDestination(place);
        outline.addLast(item);
    }

    /** Writes words from a place on their foot to the right. */
    void text(double x, double y, double points, boolean bold, Tint tint, String words) {
        String shown = printable(words);
        if (shown.isBlank()) {
            return;
        }
        try {
            stream.beginText();
            stream.setNonStrokingColor(tint.part(16), tint.part(8), tint.part(0));
            stream.setFont(font(bold), (float) points);
            stream.newLineAtOffset((float) x, (float) (height() - y));
            for (String piece : shown.split(LIGATURE)) {
                stream.showText(piece);
            }
            stream.endText();
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    /** Writes words so that they end at a place. */
    void textTo(double x, double y, double points, boolean bold, Tint tint, String words) {
        text(x - width(words, points, bold), y, points, bold, tint, words);
    }

    /** How wide words are, points. */
    double width(String words, double points, boolean bold) {
        try {
            return font(bold).getStringWidth(printable(words)) / 1000 * points;
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    private PDFont font(boolean bold) {
        return bold ? fonts.bold() : fonts.plain();
    }

    private String printable(String words) {
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

    void line(double x1, double y1, double x2, double y2, double thick, Tint tint) {
        try {
            pen(thick, tint);
            stream.moveTo((float) x1, (float) (height() - y1));
            stream.lineTo((float) x2, (float) (height() - y2));
            stream.stroke();
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    /** An outlined box. @param y of its upper edge */
    void box(double x, double y, double width, double high, double thick, Tint tint) {
        try {
            pen(thick, tint);
            stream.addRect((float) x, (float) (height() - y - high), (float) width, (float) high);
            stream.stroke();
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    /** A filled box. @param y of its upper edge */
    void fill(double x, double y, double width, double high, Tint tint) {
        try {
            stream.setNonStrokingColor(tint.part(16), tint.part(8), tint.part(0));
            stream.addRect((float) x, (float) (height() - y - high), (float) width, (float) high);
            stream.fill();
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    /** A drawing, with all that is on its paper.
     *  @param x     of its left edge
     *  @param y     of its upper edge
     *  @param scale points of the page to a point of the drawing, which is at its own size with 1 */
    void draw(Drawing drawing, double x, double y, double scale) {
        Extent box = drawing.extent();
        double each = PdfPainter.POINTS * scale;
        try {
            stream.saveGraphicsState();
            stream.transform(new Matrix((float) each, 0, 0, (float) each, (float) (x - box.left() * each), (float) (height() - y - box.top() * each)));
            new PdfPainter(stream, fonts, Palette.PAPER).paint(drawing);
            stream.restoreGraphicsState();
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    private void pen(double thick, Tint tint) throws IOException {
        stream.setStrokingColor(tint.part(16), tint.part(8), tint.part(0));
        stream.setLineWidth((float) thick);
    }

    /** The whole file; nothing can be written afterwards. */
    byte[] bytes() {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            close();
            document.save(out);
            document.close();
            return out.toByteArray();
        } catch (IOException e) {
            throw unwritable(e);
        }
    }
}
