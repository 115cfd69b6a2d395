package mouldwright.drawing;

import java.util.Locale;
import java.util.Optional;

/** Writes a drawing as SVG 1.1, true to size in millimetres. It may stand alone or inside a page. */
public final class SvgWriter {

    private final Palette palette;
    private final StringBuilder out = new StringBuilder();
    private int hatches;

    private SvgWriter(Palette palette) {
        this.palette = palette;
    }

    /** Writes a file of its own. */
    public static String file(Drawing drawing, Palette palette) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + element(drawing, palette, "");
    }

    /** Writes an element to stand in a page. @param prefix of the ids in it, so that several may stand in one page */
    public static String element(Drawing drawing, Palette palette, String prefix) {
        SvgWriter writer = new SvgWriter(palette);
        writer.write(drawing, prefix);
        return writer.out.toString();
    }

    private void write(Drawing drawing, String prefix) {
        Extent box = drawing.extent();
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").append(Figures.of(box.width())).append("mm\" height=\"").append(Figures.of(box.height()))
                .append("mm\" viewBox=\"").append(Figures.of(box.left())).append(' ').append(Figures.of(-box.top())).append(' ').append(Figures.of(box.width())).append(' ')
                .append(Figures.of(box.height())).append("\" role=\"img\" aria-labelledby=\"").append(prefix).append("title ").append(prefix).append("desc\">\n");
        out.append("<title id=\"").append(prefix).append("title\">").append(escaped(drawing.title())).append("</title>\n");
        out.append("<desc id=\"").append(prefix).append("desc\">").append(escaped(drawing.words())).append("</desc>\n");
        for (Layer layer : drawing.layers()) {
            out.append("<g class=\"").append(layer.role().layer().toLowerCase(Locale.ROOT)).append("\" fill=\"none\" stroke-linecap=\"round\" stroke-linejoin=\"round\">\n");
            layer.items().forEach(item -> item(item, prefix));
            out.append("</g>\n");
        }
        out.append("</svg>\n");
    }

    private void item(Layer.Item item, String prefix) {
        String about = item.about().isEmpty() ? "" : " data-about=\"" + escaped(item.about()) + "\"";
        switch (item.mark()) {
            case Mark.Line line -> out.append("<path").append(about).append(" d=\"").append(data(line.path())).append('"').append(stroke(line.pen())).append("/>\n");
            case Mark.Circle circle -> out.append("<circle").append(about).append(" cx=\"").append(Figures.of(circle.centre().x())).append("\" cy=\"")
                    .append(Figures.of(-circle.centre().y())).append("\" r=\"").append(Figures.of(circle.radius())).append('"').append(stroke(circle.pen())).append("/>\n");
            case Mark.Area area -> area(area, about, prefix);
            case Mark.Words words -> words(words, about);
        }
    }

    private void area(Mark.Area area, String about, String prefix) {
        StringBuilder rings = new StringBuilder();
        area.rings().forEach(ring -> rings.append(data(ring)));
        String fill = switch (area.fill()) {
            case Mark.Fill.Even even -> colour(palette.of(even.tone())) + "\" fill-opacity=\"" + Figures.of(even.strength());
            case Mark.Fill.Coloured coloured -> colour(coloured.colour());
            case Mark.Fill.Hatch hatch -> "url(#" + pattern(hatch, prefix) + ")";
        };
        out.append("<path").append(about).append(" fill-rule=\"evenodd\" d=\"").append(rings).append("\" fill=\"").append(fill).append("\"/>\n");
    }

    private String pattern(Mark.Fill.Hatch hatch, String prefix) {
        String id = prefix + "hatch" + ++hatches;
        String pitch = Figures.of(hatch.spacing());
        out.append("<pattern id=\"").append(id).append("\" patternUnits=\"userSpaceOnUse\" width=\"").append(pitch).append("\" height=\"").append(pitch)
                .append("\" patternTransform=\"rotate(").append(Figures.of(-hatch.angle())).append(")\"><path d=\"M0 0H").append(pitch).append('"').append(stroke(hatch.pen()))
                .append("/></pattern>\n");
        return id;
    }

    private void words(Mark.Words words, String about) {
        String anchor = switch (words.anchor()) {
            case START -> "start";
            case MIDDLE -> "middle";
            case END -> "end";
        };
        String place = Figures.of(words.at().x()) + "\" y=\"" + Figures.of(-words.at().y());
        String turn = words.angle() == 0 ? "" : "\" transform=\"rotate(" + Figures.of(-words.angle()) + " " + Figures.of(words.at().x()) + " " + Figures.of(-words.at().y()) + ")";
        out.append("<text").append(about).append(" x=\"").append(place).append(turn).append("\" font-family=\"DejaVu Sans, Verdana, Arial, sans-serif\" font-size=\"")
                .append(Figures.of(words.height() / Lettering.CAPITAL)).append("\" text-anchor=\"").append(anchor).append("\" fill=\"").append(colour(palette.of(words.tone()))).append("\">")
                .append(escaped(words.text())).append("</text>\n");
    }

    private String stroke(Pen pen) {
        Optional<String> dash = pen.dash().stream().map(Figures::of).reduce((a, b) -> a + " " + b);
        return " stroke=\"" + colour(palette.of(pen.tone())) + "\" stroke-width=\"" + Figures.of(pen.width()) + "\"" + dash.map(d -> " stroke-dasharray=\"" + d + "\"").orElse("");
    }

    private static String data(Path path) {
        StringBuilder data = new StringBuilder("M").append(spot(path.start()));
        Spot from = path.start();
        for (Stroke stroke : path.strokes()) {
            switch (stroke) {
                case Stroke.Line line -> data.append('L').append(spot(line.end()));
                case Stroke.Arc arc -> arc(data, from, arc);
                case Stroke.Curve curve -> data.append('C').append(spot(curve.first())).append(' ').append(spot(curve.second())).append(' ').append(spot(curve.end()));
            }
            from = stroke.end();
        }
        return data.append(path.closed() ? "Z" : "").toString();
    }

    private static void arc(StringBuilder data, Spot from, Stroke.Arc arc) {
        double angle = 4 * Math.atan(arc.bulge()), chord = from.distance(arc.end());
        if (chord == 0 || Math.abs(arc.bulge()) < 1e-9) {
            data.append('L').append(spot(arc.end()));
            return;
        }
        String radius = Figures.of(chord / (2 * Math.abs(Math.sin(angle / 2))));
        data.append('A').append(radius).append(' ').append(radius).append(" 0 ").append(Math.abs(angle) > Math.PI ? 1 : 0).append(' ').append(angle > 0 ? 0 : 1).append(' ').append(spot(arc.end()));
    }

    private static String spot(Spot spot) {
        return Figures.of(spot.x()) + " " + Figures.of(-spot.y());
    }

    static String colour(int colour) {
        return String.format(Locale.ROOT, "#%06x", colour);
    }

    /** Names are the user's: nothing in them may be taken for markup. */
    static String escaped(String text) {
        StringBuilder safe = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> {
                    if (c >= 0x20 && c != 0xfffe && c != 0xffff && !(c >= 0xd800 && c <= 0xdfff))
                        safe.appendCodePoint(c);
                }
            }
        });
        return safe.toString();
    }
}
