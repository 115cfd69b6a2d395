package mouldwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** What stands on each page besides the drawing: the square to measure, the title, which tile it is. */
final class PageFurniture {

    private static final double SQUARE = 100;
    private static final Pen THIN = Pen.full(Tone.SOFT, 0.12);

    private PageFurniture() { }

    /** Marks on the page, mm. */
    static List<Mark> of(Tiling tiling, Tiling.Tile tile, String title, String code, double correction) {
        List<Mark> marks = new ArrayList<>();
        Extent window = tiling.window();
        double side = SQUARE * correction;
        Spot corner = new Spot(window.left() + 6, window.bottom() + 6);
        marks.add(new Mark.Line(Path.box(new Extent(corner.x(), corner.y(), corner.x() + side, corner.y() + side)), THIN));
        marks.add(new Mark.Words("check: 100 mm", corner.plus(2, 2), 2.2, Mark.Anchor.START, 0, Tone.SOFT));
        marks.add(new Mark.Line(Path.box(window), THIN));
        double foot = Tiling.MARGIN + 2;
        String where = tiling.tiles().size() == 1 ? "" : "   row " + tile.row() + " of " + tiling.rows() + ", column " + tile.column() + " of " + tiling.columns();
        marks.add(new Mark.Words(title + where, new Spot(window.left(), foot), 2.6, Mark.Anchor.START, 0, Tone.INK));
        marks.add(new Mark.Words(code + "   print at 100 %, measure the square", new Spot(window.right(), foot), 2.0, Mark.Anchor.END, 0, Tone.SOFT));
        return marks;
    }
}
