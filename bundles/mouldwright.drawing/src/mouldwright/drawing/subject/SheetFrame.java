package mouldwright.drawing.subject;

import mouldwright.drawing.Draughtsman;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Lettering;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.drawing.Tone;

/**
 * The paper round what is drawn: title and what is seen above, the legend below, the code of plug and revision at the foot.
 *
 * @param board  all of it
 * @param title  of the drawing
 * @param paper  its extent
 */
record SheetFrame(Draughtsman board, String title, Extent paper) {

    private static final double MARGIN = 6;
    private static final double TITLE = 4;
    private static final double UNDER = 2.6;
    private static final double CODE = 2.2;

    /** Puts the paper round a figure.
     *  @param below what is said under the title
     *  @param code  of plug and revision
     *  @param width of the paper, mm; wider where the figure is
     *  @param box   of the figure, which stands in the middle */
    static SheetFrame around(Draughtsman board, Legend legend, String title, String below, String code, double width, Extent box) {
        double wide = Math.max(width, box.width() + 2 * MARGIN), middle = (box.left() + box.right()) / 2, left = middle - wide / 2, inside = wide - 2 * MARGIN;
        double top = box.top() + 13.5;
        board.words(Lettering.fitted(title, TITLE, inside), new Spot(left + MARGIN, top - TITLE), TITLE, Mark.Anchor.START);
        board.draw(Role.TEXT, new Mark.Words(Lettering.fitted(below, UNDER, inside), new Spot(left + MARGIN, top - TITLE - 5), UNDER, Mark.Anchor.START, 0, Tone.SOFT));
        double bottom = legend.draw(board, new Spot(left + MARGIN, box.bottom() - 5), inside, wide > 200 ? 3 : 2) - 6;
        board.draw(Role.TEXT, new Mark.Words(Lettering.fitted(code, CODE, inside), new Spot(left + wide - MARGIN, bottom + 1), CODE, Mark.Anchor.END, 0, Tone.SOFT));
        return new SheetFrame(board, title, new Extent(left, bottom - 4, left + wide, top + 5));
    }

    Drawing finish(String words) {
        return board.finish(title, words, paper);
    }
}
