package mouldwright.exchange.drawing;

import mouldwright.exchange.Faults;

/** The groups of a drawing file: a code in one line, its value in the next. */
final class Groups {

    private final String text;
    private final Faults faults;
    private int at;
    private int line;
    private int code;
    private String value = "";
    private int codeLine;

    Groups(String text, Faults faults) {
        this.text = text;
        this.faults = faults;
    }

    /** Goes to the next group. @return whether there is one that can be read */
    boolean next() {
        if (at >= text.length())
            return false;
        codeLine = line + 1;
        String written = readLine().strip();
        if (written.isEmpty() && at >= text.length())
            return false;
        code = code(written);
        if (code < 0)
            return false;
        if (at >= text.length()) {
            faults.add(codeLine, "line " + codeLine, "the file ends between a group code and its value", "save the drawing again; it was cut off");
            return false;
        }
        value = readLine().strip();
        return true;
    }

    private int code(String written) {
        int number = 0;
        for (int i = 0; i < written.length() && number >= 0; i++) {
            char c = written.charAt(i);
            number = c >= '0' && c <= '9' && i < 5 ? 10 * number + c - '0' : -1;
        }
        if (number >= 0 && !written.isEmpty())
            return number;
        faults.add(codeLine, "line " + codeLine, "`" + (written.length() > 20 ? written.substring(0, 20) + "..." : written) + "` is no group code",
                "save the drawing again, as DXF in text");
        return -1;
    }

    private String readLine() {
        int end = at;
        while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r')
            end++;
        String read = text.substring(at, end);
        at = end + (end + 1 < text.length() && text.charAt(end) == '\r' && text.charAt(end + 1) == '\n' ? 2 : 1);
        line++;
        return read;
    }

    /** The code of this group. */
    int code() { return code; }

    /** Its value, without the space around it. */
    String value() { return value; }

    /** The line its value stands in. */
    int line() { return codeLine + 1; }

    /** Whether this group is a word of structure. */
    boolean is(String word) {
        return code == 0 && value.equals(word);
    }
}
