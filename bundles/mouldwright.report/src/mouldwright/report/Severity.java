package mouldwright.report;

import java.util.Locale;

/** How much a finding weighs. */
public enum Severity {
    /** The spec cannot be built from as it stands. */
    ERROR,
    /** It can be built, but something will go wrong or wants looking at. */
    WARNING,
    /** Worth knowing. */
    INFO;

    private final String word = name().toLowerCase(Locale.ROOT);

    /** The word in messages and in JSON. */
    public String word() {
        return word;
    }
}
