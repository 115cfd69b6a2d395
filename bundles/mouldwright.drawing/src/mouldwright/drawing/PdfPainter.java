package mouldwright.drawing;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;

/** Paints drawings on a page of a PDF whose unit has been made the millimetre. */
public final class PdfPainter {

    /** A point of a PDF is 1/72 inch: points a millimetre. */
    public static final double POINTS = 72 / 25.4;

    private final PDPageContentStream page;
    private final PdfFonts fonts;
    private final Palette palette;

    /** @param page a page scaled to millimetres */
    public PdfPainter(PDPageContentStream page, PdfFonts fonts, Palette palette) {
        this.page = page;
        this.fonts = fonts;
        this.palette = palette;
    }

    /** Paints all of a drawing where the page's axes stand. */
    public void paint(Drawing drawing) throws IOException {
        for (Layer layer : drawing.layers())
            for (Layer.Item item : layer.items())
                paint(item.mark());
    }

    /** Paints one mark. */
    public void paint(Mark mark) throws IOException {
        switch (mark) {
            case Mark.Line line -> {
                take(line.pen());
                trace(line.path());
                page.stroke();
            }
            case Mark.Circle circle -> {
                take(circle.pen());
                trace(Path.circle(circle.centre(), circle.radius()));
                page.stroke();
            }
            case Mark.Area area -> fill(area);
            case Mark.Words words -> write(words);
        }
    }

    private void fill(Mark.Area area) throws IOException {
        switch (area.fill()) {
            case Mark.Fill.Even even -> fill(area, faded(palette.of(even.tone()), even.strength()));
            case Mark.Fill.Coloured coloured -> fill(area, coloured.colour());
            case Mark.Fill.Hatch hatch -> {
                page.saveGraphicsState();
                for (Path ring : area.rings())
                    trace(ring);
                page.clipEvenOdd();
                take(hatch.pen());
                for (Path line : HatchLines.over(area.extent(), hatch.spacing(), hatch.angle())) {
                    trace(line);
                    page.stroke();
                }
                page.restoreGraphicsState();
            }
        }
    }

    private void fill(Mark.Area area, int colour) throws IOException {
        page.setNonStrokingColor(part(colour, 16), part(colour, 8), part(colour, 0));
        for (Path ring : area.rings())
            trace(ring);
        page.fillEvenOdd();
    }

    /** As over the ground, so that no transparency is needed. */
    private int faded(int colour, double strength) {
        int ground = palette.ground(), result = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int from = ground >> shift & 0xff, to = colour >> shift & 0xff;
            result |= (int) Math.round(from + (to - from) * strength) << shift;
        }
        return result;
    }

    private void write(Mark.Words words) throws IOException {
        if (words.text().isEmpty())
            return;
        PDFont font = fonts.plain();
        double size = words.height() / PdfFonts.CAPITAL;
        String text = PdfFonts.printable(font, words.text());
        double width = PdfFonts.width(font, text, size), shift = switch (words.anchor()) {
            case START -> 0;
            case MIDDLE -> -width / 2;
            case END -> -width;
        };
        double angle = Math.toRadians(words.angle()), c = Math.cos(angle), s = Math.sin(angle);
        int colour = palette.of(words.tone());
        page.setNonStrokingColor(part(colour, 16), part(colour, 8), part(colour, 0));
        page.beginText();
        page.setFont(font, (float) size);
        page.setTextMatrix(new Matrix((float) c, (float) s, (float) -s, (float) c, (float) (words.at().x() + shift * c), (float) (words.at().y() + shift * s)));
        page.showText(text);
        page.endText();
    }

    private void take(Pen pen) throws IOException {
        int colour = palette.of(pen.tone());
        page.setStrokingColor(part(colour, 16), part(colour, 8), part(colour, 0));
        page.setLineWidth((float) pen.width());
        page.setLineCapStyle(1);
        page.setLineJoinStyle(1);
        float[] dash = new float[pen.dash().size()];
        for (int i = 0; i < dash.length; i++)
            dash[i] = pen.dash().get(i).floatValue();
        page.setLineDashPattern(dash, 0);
    }

    private static float part(int colour, int shift) {
        return (colour >> shift & 0xff) / 255f;
    }

    private void trace(Path path) throws IOException {
        page.moveTo((float) path.start().x(), (float) path.start().y());
        Spot from = path.start();
        for (Stroke stroke : path.strokes()) {
            switch (stroke) {
                case Stroke.Line line -> page.lineTo((float) line.end().x(), (float) line.end().y());
                case Stroke.Arc arc -> arc(from, arc);
                case Stroke.Curve curve -> curve(curve.first(), curve.second(), curve.end());
            }
            from = stroke.end();
        }
        if (path.closed())
            page.closePath();
    }

    /** By curves of an eighth of a turn, which leave the circle by 4e-6 of its radius. */
    private void arc(Spot from, Stroke.Arc arc) throws IOException {
        double angle = 4 * Math.atan(arc.bulge());
        if (Math.abs(arc.bulge()) < 1e-9) {
            page.lineTo((float) arc.end().x(), (float) arc.end().y());
            return;
        }
        Spot centre = Flattening.centre(from, arc);
        double radius = from.distance(centre), at = Math.atan2(from.y() - centre.y(), from.x() - centre.x());
        int n = Math.max(1, (int) Math.ceil(Math.abs(angle) / (Math.PI / 4)));
        double step = angle / n, reach = 4.0 / 3 * Math.tan(step / 4) * radius;
        for (int i = 0; i < n; i++) {
            double a = at + i * step, b = a + step;
            curve(centre.plus(radius * Math.cos(a) - reach * Math.sin(a), radius * Math.sin(a) + reach * Math.cos(a)),
                    centre.plus(radius * Math.cos(b) + reach * Math.sin(b), radius * Math.sin(b) - reach * Math.cos(b)),
                    i == n - 1 ? arc.end() : centre.plus(radius * Math.cos(b), radius * Math.sin(b)));
        }
    }

    private void curve(Spot first, Spot second, Spot end) throws IOException {
        page.curveTo((float) first.x(), (float) first.y(), (float) second.x(), (float) second.y(), (float) end.x(), (float) end.y());
    }
}
