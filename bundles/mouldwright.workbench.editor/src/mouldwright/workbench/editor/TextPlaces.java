package mouldwright.workbench.editor;

/** From line and column, both counted from 1, to a place in a text. */
final class TextPlaces {

    private TextPlaces() { }

    /** Characters before a place; the text's length if it has fewer lines. */
    static int offset(String text, int line, int column) {
        int at = 0;
        for (int i = 1; i < line; i++) {
            at = text.indexOf('\n', at) + 1;
            if (at == 0)
                return text.length();
        }
        return Math.min(text.length(), at + column - 1);
    }
}
