package mouldwright.project;

import java.util.Locale;
import java.util.Optional;

/** What a project makes of a check. */
public enum SeveritySetting {
    /** The spec has an error. */
    ERROR,
    /** Worth mending. */
    WARNING,
    /** Worth knowing. */
    INFO,
    /** Not looked for. */
    OFF;

    /** The word in the project file. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<SeveritySetting> of(String word) {
        for (SeveritySetting setting : values()) {
            if (setting.word().equals(word)) {
                return Optional.of(setting);
            }
        }
        return Optional.empty();
    }
}
