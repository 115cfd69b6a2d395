package mouldwright.report;

/** Text from a spec made fit for a terminal and for columns: nothing in it that a terminal might obey. */
final class Printable {

    private Printable() { }

    /** The same text with a space for each tab and line end and a question mark for every other control character; as long as before. */
    static String of(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean turnsText = c >= '\u202a' && c <= '\u202e' || c >= '\u2066' && c <= '\u2069';
            out.append(c == '\t' || c == '\n' || c == '\r' ? ' ' : Character.isISOControl(c) || turnsText ? '?' : c);
        }
        return out.toString();
    }
}
