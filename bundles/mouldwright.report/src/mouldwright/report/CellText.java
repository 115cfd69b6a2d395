package mouldwright.report;

/** Words as files for spreadsheets carry them. */
final class CellText {

    private static final String BEGINNINGS = "=+-@\t\r";

    private CellText() { }

    /** Words that a spreadsheet would take for a formula get an apostrophe before them, since a spec may come from anybody. A dash alone is a dash. */
    static String harmless(String words) {
        return words.length() > 1 && BEGINNINGS.indexOf(words.charAt(0)) >= 0 ? "'" + words : words;
    }
}
