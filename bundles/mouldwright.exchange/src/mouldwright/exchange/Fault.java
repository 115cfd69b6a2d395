package mouldwright.exchange;

/** Something in a table or drawing that cannot be read.
 *  @param line    of the file, counted from 1
 *  @param where   the place in words: {@code cell C5}, {@code line 231, LINE}
 *  @param message what is wrong, with the figure
 *  @param remedy  what would mend it */
public record Fault(int line, String where, String message, String remedy) {

    /** Place and message in one sentence. */
    public String words() {
        return where + ": " + message;
    }
}
