package mouldwright.report;

/**
 * Writes comma-separated values: cells quoted where they must be, lines ending with a line feed. A word that a spreadsheet would take for a
 * formula gets an apostrophe before it, since a spec may come from anybody.
 */
final class Csv {

    private final StringBuilder out = new StringBuilder();
    private boolean begun;

    /** Adds a cell of words. */
    Csv words(String words) {
        return cell(CellText.harmless(words));
    }

    /** Adds a cell with a number, written so that reading it gives the same number. */
    Csv number(double number) {
        return cell(Numbers.text(number));
    }

    /** Adds a cell that holds a figure or nothing, as it is written: of digits, points and hyphens, and no words of a spec. */
    Csv plain(String figure) {
        return cell(figure);
    }

    /** Ends the row. */
    Csv end() {
        out.append('\n');
        begun = false;
        return this;
    }

    /** All rows. */
    String text() {
        return out.toString();
    }

    private Csv cell(String text) {
        if (begun) {
            out.append(',');
        }
        begun = true;
        boolean quoted = text.indexOf(',') >= 0 || text.indexOf('"') >= 0 || text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0;
        out.append(quoted ? '"' + text.replace("\"", "\"\"") + '"' : text);
        return this;
    }
}
