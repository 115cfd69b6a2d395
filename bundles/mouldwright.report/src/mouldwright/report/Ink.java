package mouldwright.report;

import java.util.Locale;
import mouldwright.check.Severity;

/** Colours of the words in findings: none on paper and in pipes, a few on a terminal. */
public enum Ink {
    /** Plain text. */
    NONE,
    /** The colours every terminal knows. */
    TERMINAL;

    private static final String RESET = "\u001b[0m";

    String severity(Severity severity) {
        return switch (severity) {
            case ERROR -> paint("\u001b[1;31m", word(severity));
            case WARNING -> paint("\u001b[1;33m", word(severity));
            case INFO -> paint("\u001b[1;36m", word(severity));
        };
    }

    /** The word of a severity, in messages and in JSON. */
    static String word(Severity severity) {
        return severity.name().toLowerCase(Locale.ROOT);
    }

    String mark(String carets) {
        return paint("\u001b[1m", carets);
    }

    private String paint(String colour, String words) {
        return this == NONE ? words : colour + words + RESET;
    }
}
