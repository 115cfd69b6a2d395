package mouldwright.language.ide;

/**
 * A change of a text.
 *
 * @param offset where it begins, characters from the start of the text
 * @param length how many characters go
 * @param text   what comes in their place
 */
public record Edit(int offset, int length, String text) {

    /** Refuses places before the text. */
    public Edit {
        if (offset < 0 || length < 0) {
            throw new IllegalArgumentException("no place: " + offset + " +" + length);
        }
    }

    /** A text after changes that do not overlap. */
    public static String applied(String text, java.util.List<Edit> edits) {
        StringBuilder result = new StringBuilder(text);
        edits.stream().sorted(java.util.Comparator.comparingInt(Edit::offset).reversed())
                .forEach(edit -> result.replace(edit.offset(), edit.offset() + edit.length(), edit.text()));
        return result.toString();
    }
}
