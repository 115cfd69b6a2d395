package mouldwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** What of a drawing a tile shows: marks outside its window are left out, long full lines of straight pieces cut down to what passes it, and words kept
 *  whole. A part on many pages would else be written out on each of them. */
final class TileMarks {

    /** Round a window, so that the pen of a line beside it is seen, mm. */
    private static final double BESIDE = 2;
    /** Lines with fewer pieces are not worth cutting. */
    private static final int FEW = 8;

    private final Tiling tiling;
    private final double correction;
    private final TileWords words;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Extent> boxes = new ArrayList<>();

    TileMarks(Drawing drawing, Tiling tiling, double correction) {
        this.tiling = tiling;
        this.correction = correction;
        this.words = new TileWords(tiling, correction);
        for (Layer layer : drawing.layers())
            for (Layer.Item item : layer.items()) {
                marks.add(item.mark());
                boxes.add(item.mark().extent());
            }
    }

    /** In the drawing, from the back to the front. */
    List<Mark> on(Tiling.Tile tile) {
        Extent window = new Extent(tile.left(), tile.bottom(), tile.left() + tiling.window().width() / correction, tile.bottom() + tiling.window().height() / correction).grown(BESIDE);
        List<Mark> shown = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            if (!meets(boxes.get(i), window) && !(marks.get(i) instanceof Mark.Words))
                continue;
            switch (marks.get(i)) {
                case Mark.Words written -> words.on(tile, written).ifPresent(shown::add);
                case Mark.Line line -> lines(line, window, shown);
                default -> shown.add(marks.get(i));
            }
        }
        return shown;
    }

    private static boolean meets(Extent box, Extent window) {
        return box.left() <= window.right() && box.right() >= window.left() && box.bottom() <= window.top() && box.top() >= window.bottom();
    }

    /** A dashed line stays as it is, since its dashes go on from page to page. */
    private static void lines(Mark.Line line, Extent window, List<Mark> into) {
        Path path = line.path();
        if (path.strokes().size() < FEW || !line.pen().dash().isEmpty() || !path.strokes().stream().allMatch(Stroke.Line.class::isInstance)) {
            into.add(line);
            return;
        }
        List<Spot> spots = new ArrayList<>(List.of(path.start()));
        path.strokes().forEach(stroke -> spots.add(stroke.end()));
        if (path.closed())
            spots.add(path.start());
        List<Spot> run = new ArrayList<>();
        for (int i = 0; i + 1 < spots.size(); i++) {
            boolean seen = meets(Extent.of(spots.subList(i, i + 2)), window);
            if (seen && run.isEmpty())
                run.add(spots.get(i));
            if (seen)
                run.add(spots.get(i + 1));
            if (run.size() == spots.size()) {
                into.add(line);
                return;
            }
            if (!run.isEmpty() && (!seen || i + 2 == spots.size())) {
                into.add(new Mark.Line(Path.through(run, false), line.pen()));
                run = new ArrayList<>();
            }
        }
    }
}
