package mouldwright.report;

import java.time.LocalDate;

/** What stands in a cell of a table: words, a number that a spreadsheet can go on with, or a day. */
sealed interface Cell {

    /** An empty cell. */
    Cell NONE = new Words("");

    /** What a reader sees. */
    String text();

    /** A cell of words, with nothing in it that a terminal might obey. */
    static Cell of(String words) {
        return new Words(Printable.of(words));
    }

    /** A cell with a count. */
    static Cell of(int count) {
        return new Number(count, 0, String.valueOf(count));
    }

    /** Words. */
    record Words(String text) implements Cell { }

    /** A number.
     *  @param value    in the unit of its column, or of its row, in full
     *  @param decimals it is shown with
     *  @param text     as shown */
    record Number(double value, int decimals, String text) implements Cell { }

    /** A day of the calendar. */
    record Day(LocalDate date) implements Cell {
        @Override
        public String text() {
            return date.toString();
        }
    }
}
