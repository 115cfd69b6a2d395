package mouldwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** The square by which a print is measured: dashed and named, so that nobody cuts it, and where the drawing leaves most room for it. */
final class CheckSquare {

    /** mm, each side. */
    static final double SIDE = 100;

    /** Clear of the crosses in what two tiles share, mm. */
    private static final double INSET = 14;
    private static final int PLACES = 8;
    private static final double FINE = 0.5;
    private static final Pen PEN = new Pen(Tone.SOFT, 0.15, List.of(2.0, 1.0));

    /** Boxes round the straight pieces of all that is drawn, in the drawing, mm. */
    private final List<Extent> drawn = new ArrayList<>();

    CheckSquare(Drawing drawing) {
        for (Layer layer : drawing.layers())
            for (Layer.Item item : layer.items())
                add(item.mark());
    }

    private void add(Mark mark) {
        switch (mark) {
            case Mark.Line line -> pieces(line.path());
            case Mark.Area area -> area.rings().forEach(this::pieces);
            case Mark.Circle circle -> drawn.add(circle.extent());
            case Mark.Words words -> drawn.add(words.extent());
        }
    }

    private void pieces(Path path) {
        List<Spot> spots = new ArrayList<>(path.flattened(FINE));
        if (path.closed())
            spots.add(path.start());
        for (int i = 0; i + 1 < spots.size(); i++)
            drawn.add(Extent.of(spots.subList(i, i + 2)));
    }

    /** Marks of the square on a page, mm. */
    List<Mark> on(Tiling tiling, Tiling.Tile tile, double correction) {
        double side = SIDE * correction;
        Spot corner = corner(tiling, tile, correction, side);
        Path box = Path.box(new Extent(corner.x(), corner.y(), corner.x() + side, corner.y() + side));
        return List.of(new Mark.Line(box, PEN), new Mark.Words("check: 100 mm", corner.plus(3, 6.5), 2.2, Mark.Anchor.START, 0, Tone.SOFT),
                new Mark.Words("not part of the drawing, do not cut", corner.plus(3, 2.5), 2.2, Mark.Anchor.START, 0, Tone.SOFT));
    }

    /** The first of the places, from the left lower one, that fewest pieces of the drawing cross. */
    private Spot corner(Tiling tiling, Tiling.Tile tile, double correction, double side) {
        Extent window = tiling.window();
        List<Extent> here = within(new Extent(tile.left(), tile.bottom(), tile.left() + window.width() / correction, tile.bottom() + window.height() / correction), drawn);
        Spot best = new Spot(window.left() + INSET, window.bottom() + INSET);
        int least = Integer.MAX_VALUE;
        for (int row = 0; row < PLACES; row++)
            for (int column = 0; column < PLACES; column++) {
                Spot corner = new Spot(window.left() + INSET + column * Math.max(0, window.width() - side - 2 * INSET) / (PLACES - 1),
                        window.bottom() + INSET + row * Math.max(0, window.height() - side - 2 * INSET) / (PLACES - 1));
                double left = tile.left() + (corner.x() - window.left()) / correction, bottom = tile.bottom() + (corner.y() - window.bottom()) / correction;
                int crossed = within(new Extent(left, bottom, left + SIDE, bottom + SIDE).grown(2), here).size();
                if (crossed < least) {
                    least = crossed;
                    best = corner;
                }
                if (crossed == 0)
                    return best;
            }
        return best;
    }

    private static List<Extent> within(Extent square, List<Extent> boxes) {
        List<Extent> found = new ArrayList<>();
        for (Extent box : boxes)
            if (box.left() <= square.right() && box.right() >= square.left() && box.bottom() <= square.top() && box.top() >= square.bottom())
                found.add(box);
        return found;
    }
}
