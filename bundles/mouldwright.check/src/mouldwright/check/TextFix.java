package mouldwright.check;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/** A way to mend a finding, as edits of the text it was found in.
 *  @param title what it does, in a few words
 *  @param safe  whether it may be done unasked
 *  @param edits in the order of the text, none reaching into another; offsets are those of the text before the fix */
public record TextFix(String title, boolean safe, List<TextEdit> edits) {

    /** Sorts its edits, and refuses those that reach into each other. */
    public TextFix {
        Objects.requireNonNull(title, "title");
        edits = edits.stream().sorted(Comparator.comparingInt(TextEdit::offset)).toList();
        for (int i = 1; i < edits.size(); i++)
            if (edits.get(i).offset() < edits.get(i - 1).end())
                throw new IllegalArgumentException("edits reach into each other: " + title);
    }

    /** Whether both can be done to the same text without one disturbing the other. */
    public boolean apartFrom(TextFix other) {
        return edits.stream().allMatch(mine -> other.edits.stream().allMatch(theirs -> mine.end() < theirs.offset() || theirs.end() < mine.offset()));
    }

    /** The text with the fix in it. */
    public String applyTo(String text) {
        StringBuilder result = new StringBuilder(text);
        for (TextEdit edit : edits.reversed())
            result.replace(edit.offset(), edit.end(), edit.text());
        return result.toString();
    }
}
