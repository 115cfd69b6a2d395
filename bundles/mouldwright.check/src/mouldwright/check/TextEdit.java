package mouldwright.check;

import java.util.Objects;

/** A stretch of a text that is written anew.
 *  @param offset of its first character, from the start of the text
 *  @param length in characters; 0 where something is put in between
 *  @param text   what stands there then */
public record TextEdit(int offset, int length, String text) {

    /** Refuses a stretch that is none. */
    public TextEdit {
        Objects.requireNonNull(text, "text");
        if (offset < 0 || length < 0)
            throw new IllegalArgumentException("no stretch of a text: " + offset + " +" + length);
    }

    /** Where it ends. */
    public int end() {
        return offset + length;
    }
}
