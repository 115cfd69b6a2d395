package mouldwright.services;

import java.nio.file.Path;
import java.util.Optional;
import mouldwright.check.Severity;
import mouldwright.report.TextFinding;

/** Keeps texts out whose formulas go deeper, or on for longer, than anybody writes and than the parser can follow without running out of stack. */
final class Nesting {

    private static final int DEEPEST = 100;
    private static final int LONGEST = 500;

    private Nesting() { }

    /** What is wrong with a text, at the bracket or operator that is one too many. */
    static Optional<TextFinding> finding(Path file, String text) {
        int depth = 0;
        int operators = 0;
        for (int i = 0; i < text.length(); i++) {
            switch (text.charAt(i)) {
                case '"' -> i = end(text, i + 1, "\"");
                case '/' -> {
                    if (text.startsWith("//", i))
                        i = end(text, i, "\n");
                    else if (text.startsWith("/*", i))
                        i = end(text, i + 2, "*/");
                    else
                        operators++;
                }
                case '(' -> depth++;
                case ')' -> depth = Math.max(0, depth - 1);
                case '+', '-', '*' -> operators++;
                default -> { }
            }
            if (depth == 0)
                operators = 0;
            if (depth > DEEPEST)
                return Optional.of(at(file, text, i, "a formula more than " + DEEPEST + " parentheses deep cannot be followed"));
            if (operators > LONGEST)
                return Optional.of(at(file, text, i, "a formula of more than " + LONGEST + " terms cannot be followed"));
        }
        return Optional.empty();
    }

    /** Where a text or comment ends; on its line for a text, at the end of all if it does not. */
    private static int end(String text, int from, String mark) {
        int end = text.indexOf(mark, from);
        int line = mark.equals("\"") ? text.indexOf('\n', from) : -1;
        if (line >= 0 && (end < 0 || line < end))
            return line;
        return end < 0 ? text.length() - 1 : end + mark.length() - 1;
    }

    private static TextFinding at(Path file, String text, int offset, String message) {
        int line = 1 + (int) text.substring(0, offset).chars().filter(c -> c == '\n').count();
        int column = offset - text.lastIndexOf('\n', offset - 1);
        return new TextFinding(Codes.TOO_DEEP, Severity.ERROR, message, file, line, column, 1, Optional.of("name parts of it with `let`"));
    }
}
