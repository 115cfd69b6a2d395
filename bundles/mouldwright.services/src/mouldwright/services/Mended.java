package mouldwright.services;

import java.util.List;

/**
 * A spec before and after what could be mended in it unasked.
 *
 * @param before its text; empty where it could not be read
 * @param after  its text with the fixes in it
 * @param done   what was done, in the order of the text, pass by pass
 */
public record Mended(String before, String after, List<String> done) {

    /** Takes a copy. */
    public Mended {
        done = List.copyOf(done);
    }

    /** Whether there is something to write. */
    public boolean changed() {
        return !before.equals(after);
    }
}
