package mouldwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Writes a drawing as ASCII DXF of the AC1015 kind, in millimetres. Lines become light polylines with bulges for arcs, bends other than
 * arcs become chords that leave them by {@value #TOLERANCE} mm at most, circles stay circles; filled areas are left out, since nothing
 * is cut by them.
 */
public final class DxfWriter {

    /** mm. */
    public static final double TOLERANCE = 0.05;

    private static final String MODEL_SPACE = "1F";

    private final StringBuilder out = new StringBuilder();
    private int handle = 0x100;

    private DxfWriter() { }

    /** The file's text; lines end as the format wants them. */
    public static String write(Drawing drawing) {
        DxfWriter writer = new DxfWriter();
        StringBuilder entities = new StringBuilder();
        for (Layer layer : drawing.layers())
            for (Layer.Item item : layer.items())
                writer.entity(entities, layer.role(), item.mark());
        writer.frame(drawing, entities);
        return writer.out.toString();
    }

    private void frame(Drawing drawing, StringBuilder entities) {
        List<String> layers = new ArrayList<>();
        for (Layer layer : drawing.layers())
            layers.add(layer.role().layer());
        new DxfFrame(out, drawing.extent(), layers, Integer.toHexString(handle + 1).toUpperCase(Locale.ROOT)).around(entities);
    }

    private void entity(StringBuilder to, Role role, Mark mark) {
        switch (mark) {
            case Mark.Line line -> polyline(to, role, line.path());
            case Mark.Circle circle -> {
                head(to, "CIRCLE", role, "AcDbCircle");
                point(to, circle.centre());
                pair(to, 40, Figures.of(circle.radius()));
            }
            case Mark.Words words -> words(to, role, words);
            case Mark.Area area -> { }
        }
    }

    private void polyline(StringBuilder to, Role role, Path path) {
        List<Spot> spots = new ArrayList<>(List.of(path.start()));
        List<Double> bulges = new ArrayList<>();
        for (Stroke stroke : path.strokes()) {
            if (stroke instanceof Stroke.Arc arc) {
                spots.add(arc.end());
                bulges.add(arc.bulge());
            } else {
                int before = spots.size();
                Flattening.add(spots, stroke, TOLERANCE);
                for (int i = before; i < spots.size(); i++)
                    bulges.add(0.0);
            }
        }
        bulges.add(0.0);
        if (path.closed() && spots.size() > 1 && spots.getLast().distance(spots.getFirst()) < 1e-9) {
            spots.removeLast();
            bulges.removeLast();
        }
        head(to, "LWPOLYLINE", role, "AcDbPolyline");
        pair(to, 90, Integer.toString(spots.size()));
        pair(to, 70, path.closed() ? "1" : "0");
        for (int i = 0; i < spots.size(); i++) {
            pair(to, 10, Figures.of(spots.get(i).x()));
            pair(to, 20, Figures.of(spots.get(i).y()));
            if (bulges.get(i) != 0)
                pair(to, 42, String.format(Locale.ROOT, "%.9f", bulges.get(i)));
        }
    }

    private void words(StringBuilder to, Role role, Mark.Words words) {
        if (words.text().isEmpty())
            return;
        head(to, "TEXT", role, "AcDbText");
        point(to, words.at());
        pair(to, 40, Figures.of(words.height()));
        pair(to, 1, text(words.text()));
        pair(to, 50, Figures.of(words.angle()));
        if (words.anchor() != Mark.Anchor.START) {
            pair(to, 72, words.anchor() == Mark.Anchor.MIDDLE ? "1" : "2");
            pair(to, 11, Figures.of(words.at().x()));
            pair(to, 21, Figures.of(words.at().y()));
            pair(to, 31, "0");
        }
        pair(to, 100, "AcDbText");
    }

    /** ASCII; other letters by their numbers, and nothing that the format would take for a sign of its own. */
    static String text(String words) {
        StringBuilder safe = new StringBuilder();
        words.chars().forEach(c -> {
            if (c == '%' || c == '\\' || c == '^' || c > 0x7e)
                safe.append(String.format(Locale.ROOT, "\\U+%04X", c));
            else if (c >= 0x20)
                safe.append((char) c);
        });
        return safe.toString();
    }

    private void head(StringBuilder to, String kind, Role role, String subclass) {
        pair(to, 0, kind);
        pair(to, 5, Integer.toHexString(handle++).toUpperCase(Locale.ROOT));
        pair(to, 330, MODEL_SPACE);
        pair(to, 100, "AcDbEntity");
        pair(to, 8, role.layer());
        pair(to, 100, subclass);
    }

    private static void point(StringBuilder to, Spot spot) {
        pair(to, 10, Figures.of(spot.x()));
        pair(to, 20, Figures.of(spot.y()));
        pair(to, 30, "0");
    }

    static void pair(StringBuilder to, int code, String value) {
        to.append(code).append("\r\n").append(value).append("\r\n");
    }
}
