package mouldwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** How a drawing is cut up for paper: equal windows that overlap, row by row from the top, with crosses to line neighbours up by. */
final class Tiling {

    /** Unprinted edge of the paper, mm; printers reach no farther. */
    static final double MARGIN = 10;
    /** What two neighbours both show, mm. */
    static final double OVERLAP = 15;
    /** For the title at the foot, mm. */
    static final double FOOT = 9;

    /** A window. @param row from the top, from 1 @param column from the left, from 1 @param left @param bottom corner in the drawing, mm */
    record Tile(int row, int column, double left, double bottom) { }

    /** Pages of one drawing beyond which a figure is wrong by a unit, or the paper is the wrong one: four hundred A4 cover 16 square metres. */
    static final int MOST = 400;

    /** What is lost in adding margins, mm. */
    private static final double ROUNDING = 1e-6;

    private final double pageWidth;
    private final double pageHeight;
    private final double correction;
    private final List<Tile> tiles = new ArrayList<>();
    private final int rows;
    private final int columns;
    private final double stepAcross;
    private final double stepUp;

    Tiling(Extent drawn, Paper paper, double correction) {
        this.correction = correction;
        Page page = Page.of(drawn, paper, correction);
        if (page.count > MOST)
            throw new IllegalArgumentException(page.count + " pages for one drawing");
        pageWidth = page.width;
        pageHeight = page.height;
        double across = window().width() / correction, up = window().height() / correction;
        columns = count(drawn.width(), across);
        rows = count(drawn.height(), up);
        stepAcross = across - OVERLAP;
        stepUp = up - OVERLAP;
        double left = drawn.left() - (columns == 1 ? (across - drawn.width()) / 2 : 0);
        double top = drawn.top() + (rows == 1 ? (up - drawn.height()) / 2 : 0);
        for (int row = 0; row < rows; row++)
            for (int column = 0; column < columns; column++)
                tiles.add(new Tile(row + 1, column + 1, left + column * stepAcross, top - row * stepUp - up));
    }

    /** How many pages a drawing takes, without making them. */
    static long pages(Extent drawn, Paper paper, double correction) {
        return Page.of(drawn, paper, correction).count;
    }

    /** A page, upright or turned. @param width @param height mm @param count how many of them a drawing takes */
    private record Page(double width, double height, long count) {

        /** The one that takes fewer pages; of as many the shorter one, which counts on a roll. */
        static Page of(Extent drawn, Paper paper, double correction) {
            Page upright = sized(drawn, paper.width(), paper.lengthFor(drawn.height() * correction + 2 * MARGIN + FOOT), correction);
            Page turned = sized(drawn, paper.lengthFor(drawn.width() * correction + 2 * MARGIN), paper.width(), correction);
            return turned.count < upright.count || turned.count == upright.count && turned.width < upright.height ? turned : upright;
        }

        private static Page sized(Extent drawn, double width, double height, double correction) {
            long across = Tiling.count(drawn.width(), (width - 2 * MARGIN) / correction), up = Tiling.count(drawn.height(), (height - 2 * MARGIN - FOOT) / correction);
            return new Page(width, height, across * up);
        }
    }

    private static int count(double length, double window) {
        return length <= window + ROUNDING ? 1 : (int) Math.ceil((length - OVERLAP) / (window - OVERLAP) - 1e-9);
    }

    double pageWidth() {
        return pageWidth;
    }

    double pageHeight() {
        return pageHeight;
    }

    int rows() {
        return rows;
    }

    int columns() {
        return columns;
    }

    List<Tile> tiles() {
        return List.copyOf(tiles);
    }

    /** Where on the page the drawing shows, mm. */
    Extent window() {
        return new Extent(MARGIN, MARGIN + FOOT, pageWidth - MARGIN, pageHeight - MARGIN);
    }

    /** Crosses in the middle of what this tile shares with its neighbours; both print them at the same place of the drawing. On the page, mm. */
    List<Mark> crosses(Tile tile) {
        List<Mark> marks = new ArrayList<>();
        double up = window().height() / correction, across = window().width() / correction;
        for (int side : new int[] {-1, 1}) {
            if (tile.column() + side >= 1 && tile.column() + side <= columns) {
                double x = side < 0 ? tile.left() + OVERLAP / 2 : tile.left() + across - OVERLAP / 2;
                cross(marks, tile, x, tile.bottom() + up * 0.2);
                cross(marks, tile, x, tile.bottom() + up * 0.8);
            }
            if (tile.row() - side >= 1 && tile.row() - side <= rows) {
                double y = side < 0 ? tile.bottom() + OVERLAP / 2 : tile.bottom() + up - OVERLAP / 2;
                cross(marks, tile, tile.left() + across * 0.2, y);
                cross(marks, tile, tile.left() + across * 0.8, y);
            }
        }
        return marks;
    }

    private void cross(List<Mark> marks, Tile tile, double x, double y) {
        Spot at = new Spot(window().left() + (x - tile.left()) * correction, window().bottom() + (y - tile.bottom()) * correction);
        Pen pen = Pen.full(Tone.INK, 0.15);
        marks.add(new Mark.Line(Path.line(at.plus(-5, 0), at.plus(5, 0)), pen));
        marks.add(new Mark.Line(Path.line(at.plus(0, -5), at.plus(0, 5)), pen));
        marks.add(new Mark.Circle(at, 2.5, pen));
    }
}
