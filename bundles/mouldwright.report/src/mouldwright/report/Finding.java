package mouldwright.report;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;

/**
 * Something found in a spec, with its place.
 *
 * @param code     stable, such as {@code MW412}
 * @param severity how much it weighs
 * @param message  the figure, the limit and what follows, in words
 * @param file     absolute
 * @param line     counted from 1
 * @param column   counted from 1, in characters
 * @param length   characters it covers, 0 for a place between two
 * @param fix      what mends it, in words
 */
public record Finding(String code, Severity severity, String message, Path file, int line, int column, int length,
        Optional<String> fix) {

    /** By file, then by place in it; the heavier one first where two stand at one place. */
    public static final Comparator<Finding> BY_PLACE = Comparator.comparing((Finding finding) -> finding.file().toString())
            .thenComparingInt(Finding::line).thenComparingInt(Finding::column).thenComparing(Finding::severity)
            .thenComparing(Finding::code).thenComparing(Finding::message);

    /** Refuses missing parts and places before the first line or column. */
    public Finding {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(fix, "fix");
        if (line < 1 || column < 1 || length < 0) {
            throw new IllegalArgumentException("no place: " + line + ":" + column + " +" + length);
        }
    }

    /** A finding about a file as a whole. */
    public static Finding ofFile(String code, Severity severity, String message, Path file) {
        return new Finding(code, severity, message, file, 1, 1, 0, Optional.empty());
    }

    /** The same finding with another weight. */
    public Finding weighing(Severity other) {
        return new Finding(code, other, message, file, line, column, length, fix);
    }
}
