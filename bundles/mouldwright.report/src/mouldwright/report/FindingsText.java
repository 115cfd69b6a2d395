package mouldwright.report;

import mouldwright.check.Severity;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * Findings as a good compiler prints them: the place, the weight, the code and the message; the source line with a mark under what is
 * meant; what mends it.
 */
public final class FindingsText {

    private static final int LINE_AT_MOST = 160;

    private final PathNames names;
    private final Map<Path, String> texts;
    private final Ink ink;

    /**
     * A printer of findings.
     *
     * @param names how files are named
     * @param texts of the files that were read, by absolute path; of others no source line is shown
     * @param ink   colours
     */
    public FindingsText(PathNames names, Map<Path, String> texts, Ink ink) {
        this.names = names;
        this.texts = Map.copyOf(texts);
        this.ink = ink;
    }

    /** All findings, in their order, each ending with a line end. */
    public String print(List<TextFinding> findings) {
        StringBuilder out = new StringBuilder();
        SourceLines lines = new SourceLines(texts);
        for (TextFinding finding : findings) {
            print(finding, lines, out);
        }
        return out.toString();
    }

    /** A finding on one line, without its source. */
    public String headline(TextFinding finding) {
        return place(finding) + "  " + ink.severity(finding.severity()) + " " + finding.code() + "  " + Printable.of(finding.message());
    }

    private String place(TextFinding finding) {
        return names.of(finding.file()) + ":" + finding.line() + ":" + finding.column();
    }

    private void print(TextFinding finding, SourceLines lines, StringBuilder out) {
        out.append(headline(finding)).append('\n');
        String source = lines.line(finding.file(), finding.line());
        if (!source.isBlank()) {
            source(finding, source, out);
        }
        finding.fix().ifPresent(fix -> out.append("   fix: ").append(Printable.of(fix)).append('\n'));
    }

    /** A line too long to read is cut to the part round the place. */
    private void source(TextFinding finding, String line, StringBuilder out) {
        int start = Math.min(finding.column() - 1, line.length());
        int from = start > LINE_AT_MOST - 20 ? start - 40 : 0;
        int to = Math.min(line.length(), from + LINE_AT_MOST);
        String number = String.valueOf(finding.line());
        String margin = " ".repeat(Math.max(1, 5 - number.length())) + number;
        out.append(margin).append(" | ").append(Printable.of(line.substring(from, to))).append('\n');
        int covered = Math.max(1, Math.min(finding.length(), to - start));
        out.append(" ".repeat(margin.length())).append(" | ").append(" ".repeat(start - from)).append(ink.mark("^".repeat(covered))).append('\n');
    }

    /** The count in words: {@code 2 errors, 1 warning}; {@code no findings}. */
    public static String summary(List<TextFinding> findings) {
        int[] counts = new int[Severity.values().length];
        for (TextFinding finding : findings) {
            counts[finding.severity().ordinal()]++;
        }
        StringBuilder out = new StringBuilder();
        count(out, counts[Severity.ERROR.ordinal()], "error", "errors");
        count(out, counts[Severity.WARNING.ordinal()], "warning", "warnings");
        count(out, counts[Severity.INFO.ordinal()], "note", "notes");
        return out.isEmpty() ? "no findings" : out.toString();
    }

    private static void count(StringBuilder out, int count, String one, String many) {
        if (count > 0) {
            out.append(out.isEmpty() ? "" : ", ").append(count).append(' ').append(count == 1 ? one : many);
        }
    }
}
