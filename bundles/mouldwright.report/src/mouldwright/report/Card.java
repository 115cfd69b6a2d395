package mouldwright.report;

import java.util.List;
import mouldwright.drawing.Drawing;

/**
 * A card for the shop: one page, read at arm's length with gloves on.
 *
 * @param kind     what is done, a word or two
 * @param title    what it is done to
 * @param part     bay and lift, session or list, for the code of the card
 * @param under    lines under the title
 * @param pieces   from top to bottom
 * @param cautions of this work
 */
record Card(String kind, String title, String part, List<String> under, List<Piece> pieces, List<Caution> cautions) {

    /** Takes copies. */
    Card {
        under = List.copyOf(under);
        pieces = List.copyOf(pieces);
        cautions = List.copyOf(cautions);
    }

    /** The same card with other pieces, one of several.
     *  @param number counted from 1 */
    Card share(int number, int of, List<Piece> other) {
        return new Card(kind, title + (of > 1 ? ", " + number + " of " + of : ""), part + (of > 1 ? "." + number : ""), under, other, cautions);
    }

    /** What stands on a card. */
    sealed interface Piece { }

    /** Figures that must be seen first. */
    record Keys(List<Key> keys) implements Piece { }

    /** A figure.
     *  @param label over it */
    record Key(String label, String value, String unit) { }

    /** Things to do, each with a box to tick. */
    record Ticks(List<String> words) implements Piece { }

    /** Boxes to tick, numbered from 1, such as one for each pot. */
    record Boxes(String label, int count) implements Piece { }

    /** Places to write in with a pen. */
    record Blanks(List<String> labels) implements Piece { }

    /** A list with a box to tick in each row.
     *  @param strong heads of the columns that are mixed, cut or bought by */
    record Rows(Table table, List<String> strong) implements Piece { }

    /** A drawing, as large as the card has room for and never larger than it was drawn. */
    record Picture(Drawing drawing) implements Piece { }

    /** Work on its days, with a box to tick for each. */
    record Bars(List<Bar> bars, double days) implements Piece { }

    /** A task.
     *  @param when  in words
     *  @param from  days from the first morning
     *  @param to    end of the work, days
     *  @param ready end of the wait after it, days
     *  @param critical whether the job ends later if it does */
    record Bar(String words, String when, double from, double to, double ready, boolean critical) { }
}
