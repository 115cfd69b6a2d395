package mouldwright.report;

import mouldwright.check.Severity;
import mouldwright.check.TextFix;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Something found in a spec, at its place in a text.
 *
 * @param code     stable, such as {@code MW412}
 * @param severity how much it weighs
 * @param message  the figure, the limit and what follows, in words
 * @param file     absolute
 * @param line     counted from 1
 * @param column   counted from 1, in characters
 * @param length   characters it covers, 0 for a place between two
 * @param fix      what mends it, in words
 * @param fixes    what mends it in the text, the best first
 */
public record TextFinding(String code, Severity severity, String message, Path file, int line, int column, int length,
        Optional<String> fix, List<TextFix> fixes) {

    /** By file, then by place in it; the heavier one first where two stand at one place. */
    public static final Comparator<TextFinding> BY_PLACE = Comparator.comparing((TextFinding finding) -> finding.file().toString())
            .thenComparingInt(TextFinding::line).thenComparingInt(TextFinding::column).thenComparing(TextFinding::severity)
            .thenComparing(TextFinding::code).thenComparing(TextFinding::message);

    /** Refuses missing parts and places before the first line or column. */
    public TextFinding {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(fix, "fix");
        fixes = List.copyOf(fixes);
        if (line < 1 || column < 1 || length < 0) {
            throw new IllegalArgumentException("no place: " + line + ":" + column + " +" + length);
        }
    }

    /** A finding that the text alone cannot mend. */
    public TextFinding(String code, Severity severity, String message, Path file, int line, int column, int length, Optional<String> fix) {
        this(code, severity, message, file, line, column, length, fix, List.of());
    }

    /** A finding about a file as a whole. */
    public static TextFinding ofFile(String code, Severity severity, String message, Path file) {
        return new TextFinding(code, severity, message, file, 1, 1, 0, Optional.empty());
    }

    /** The same finding with another weight. */
    public TextFinding weighing(Severity other) {
        return new TextFinding(code, other, message, file, line, column, length, fix, fixes);
    }
}
