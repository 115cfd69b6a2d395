package mouldwright.services;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import mouldwright.check.Severity;
import mouldwright.check.TextFix;
import mouldwright.project.ProjectFault;
import mouldwright.report.TextFinding;
import org.eclipse.xtext.validation.Issue;

/** Turns what the language and the project have to say into findings at their places. */
final class FindingMaker {

    /** Of a finding that came without a code. */
    private static final String NAMELESS = "MW900";

    private FindingMaker() { }

    /** A finding of the language that nobody is to be offered a fix for. */
    static TextFinding of(Issue issue, Path file) {
        return of(issue, file, List.of());
    }

    /** A finding of the language; the first of its data is what mends it.
     *  @param fixes what mends it in the text */
    static TextFinding of(Issue issue, Path file, List<TextFix> fixes) {
        String[] data = issue.getData();
        Optional<String> fix = data == null || data.length == 0 || data[0] == null || data[0].isBlank() ? Optional.empty() : Optional.of(data[0]);
        String code = issue.getCode() == null || !issue.getCode().startsWith("MW") ? NAMELESS : issue.getCode();
        return new TextFinding(code, severity(issue.getSeverity()), issue.getMessage(), file, atLeast(1, issue.getLineNumber()),
                atLeast(1, issue.getColumn()), atLeast(0, issue.getLength()), fix, fixes);
    }

    private static int atLeast(int least, Integer number) {
        return number == null ? least : Math.max(least, number);
    }

    private static Severity severity(org.eclipse.xtext.diagnostics.Severity severity) {
        return switch (severity) {
            case ERROR -> Severity.ERROR;
            case WARNING -> Severity.WARNING;
            case INFO, IGNORE -> Severity.INFO;
        };
    }

    /** A line of the project file that is not understood. */
    static TextFinding of(ProjectFault fault) {
        return new TextFinding(Codes.PROJECT, Severity.WARNING, fault.message(), fault.file(), fault.line(), fault.column(), 0, Optional.empty());
    }
}
