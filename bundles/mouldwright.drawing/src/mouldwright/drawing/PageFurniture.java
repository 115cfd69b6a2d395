package mouldwright.drawing;

import java.util.List;

/** What stands on each page besides the drawing and the square to measure: its edge, the title, which tile it is. */
final class PageFurniture {

    private static final Pen THIN = Pen.full(Tone.SOFT, 0.12);
    private static final double TITLE = 2.6;
    private static final double CODE = 2.0;
    private static final double BETWEEN = 5;
    private static final String ASK = "   print at 100 %, measure the square";

    private PageFurniture() { }

    /** Marks on the page, mm. Names that leave no room for one another are shortened; which tile it is and how to print it are not. */
    static List<Mark> of(Tiling tiling, Tiling.Tile tile, String title, String code) {
        Extent window = tiling.window();
        String where = tiling.tiles().size() == 1 ? "" : "   row " + tile.row() + " of " + tiling.rows() + ", column " + tile.column() + " of " + tiling.columns();
        double room = window.width() - BETWEEN - Lettering.width(where, TITLE) - Lettering.width(ASK, CODE);
        double wanted = Lettering.width(title, TITLE), other = Lettering.width(code, CODE);
        double forTitle = wanted + other <= room ? wanted : Math.max(room / 2, room - other);
        String named = Lettering.fitted(title, TITLE, forTitle) + where;
        String coded = Lettering.fitted(code, CODE, room - Math.min(wanted, forTitle)) + ASK;
        double foot = Tiling.MARGIN + 2;
        return List.of(new Mark.Line(Path.box(window), THIN), new Mark.Words(named, new Spot(window.left(), foot), TITLE, Mark.Anchor.START, 0, Tone.INK),
                new Mark.Words(coded, new Spot(window.right(), foot), CODE, Mark.Anchor.END, 0, Tone.SOFT));
    }
}
