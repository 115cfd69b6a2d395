package mouldwright.report;

/** Colours of the words in findings: none on paper and in pipes, a few on a terminal. */
public enum Ink {
    /** Plain text. */
    NONE,
    /** The colours every terminal knows. */
    TERMINAL;

    private static final String RESET = "\u001b[0m";

    String severity(Severity severity) {
        return switch (severity) {
            case ERROR -> paint("\u001b[1;31m", severity.word());
            case WARNING -> paint("\u001b[1;33m", severity.word());
            case INFO -> paint("\u001b[1;36m", severity.word());
        };
    }

    String mark(String carets) {
        return paint("\u001b[1m", carets);
    }

    private String paint(String colour, String words) {
        return this == NONE ? words : colour + words + RESET;
    }
}
