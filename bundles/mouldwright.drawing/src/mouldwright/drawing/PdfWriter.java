package mouldwright.drawing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;

/** Writes drawings as PDF, true to size, each on pages of the paper asked for. The same drawings give the same bytes. */
public final class PdfWriter {

    private final Paper paper;
    private final double correction;
    private final String code;

    /**
     * A writer for a printer.
     *
     * @param paper      it prints on
     * @param correction by which all is enlarged to come out true: 100 mm over what the check square of an earlier print measured
     * @param code       of plug and revision, printed on each page
     */
    public PdfWriter(Paper paper, double correction, String code) {
        if (!(correction > 0.9 && correction < 1.1))
            throw new IllegalArgumentException("a printer off by more than a tenth: " + correction);
        this.paper = paper;
        this.correction = correction;
        this.code = code;
    }

    /** A drawing that takes more pages than anybody joins. @param title of it @param pages it takes @param most that are written */
    public record TooLarge(String title, long pages, int most) { }

    /** The first drawing that takes too many pages of a paper; empty where all can be written. */
    public static Optional<TooLarge> tooLarge(List<Drawing> drawings, Paper paper, double correction) {
        return drawings.stream().map(drawing -> new TooLarge(drawing.title(), Tiling.pages(drawing.extent(), paper, correction), Tiling.MOST))
                .filter(one -> one.pages() > one.most()).findFirst();
    }

    /** Writes drawings one after the other, each in as many tiles as it needs; none may be {@link #tooLarge}. */
    public byte[] write(String title, List<Drawing> drawings) {
        return document(title, (document, fonts) -> {
            for (Drawing drawing : drawings) {
                Tiling tiling = new Tiling(drawing.extent(), paper, correction);
                CheckSquare square = new CheckSquare(drawing);
                TileMarks marks = new TileMarks(drawing, tiling, correction);
                for (Tiling.Tile tile : tiling.tiles())
                    tile(document, fonts, drawing, square, marks, tiling, tile);
            }
        });
    }

    /** Writes drawings one a page, the page as large as the drawing. */
    public static byte[] pages(String title, List<Drawing> drawings) {
        return document(title, (document, fonts) -> {
            for (Drawing drawing : drawings) {
                Extent box = drawing.extent();
                try (PDPageContentStream page = page(document, box.width(), box.height())) {
                    page.transform(Matrix.getTranslateInstance((float) -box.left(), (float) -box.bottom()));
                    new PdfPainter(page, fonts, Palette.PAPER).paint(drawing);
                }
            }
        });
    }

    private interface Content {
        void into(PDDocument document, PdfFonts fonts) throws IOException;
    }

    private static byte[] document(String title, Content content) {
        try (PDDocument document = new PDDocument(); ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            document.setDocumentId(1L);
            document.getDocumentInformation().setTitle(title);
            document.getDocumentInformation().setProducer("Mouldwright");
            content.into(document, new PdfFonts(document));
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("memory refused to be written", e);
        }
    }

    private static PDPageContentStream page(PDDocument document, double width, double height) throws IOException {
        PDPage page = new PDPage(new PDRectangle((float) (width * PdfPainter.POINTS), (float) (height * PdfPainter.POINTS)));
        document.addPage(page);
        PDPageContentStream stream = new PDPageContentStream(document, page);
        stream.transform(Matrix.getScaleInstance((float) PdfPainter.POINTS, (float) PdfPainter.POINTS));
        return stream;
    }

    private void tile(PDDocument document, PdfFonts fonts, Drawing drawing, CheckSquare square, TileMarks marks, Tiling tiling, Tiling.Tile tile) throws IOException {
        try (PDPageContentStream page = page(document, tiling.pageWidth(), tiling.pageHeight())) {
            PdfPainter painter = new PdfPainter(page, fonts, Palette.PAPER);
            Extent window = tiling.window();
            page.saveGraphicsState();
            page.addRect((float) window.left(), (float) window.bottom(), (float) window.width(), (float) window.height());
            page.clip();
            page.saveGraphicsState();
            page.transform(new Matrix((float) correction, 0, 0, (float) correction, (float) (window.left() - correction * tile.left()), (float) (window.bottom() - correction * tile.bottom())));
            for (Mark mark : marks.on(tile))
                painter.paint(mark);
            page.restoreGraphicsState();
            for (Mark mark : tiling.crosses(tile))
                painter.paint(mark);
            page.restoreGraphicsState();
            for (Mark mark : square.on(tiling, tile, correction))
                painter.paint(mark);
            for (Mark mark : PageFurniture.of(tiling, tile, drawing.title(), code))
                painter.paint(mark);
        }
    }
}
