package mouldwright.services;

import java.nio.file.Path;
import java.util.Optional;
import mouldwright.plan.PlanFault;
import mouldwright.plan.ledger.Figures;
import mouldwright.plan.read.ReadProblem;
import mouldwright.plan.spec.Origin;
import mouldwright.project.ProjectFault;
import mouldwright.report.Finding;
import mouldwright.report.Severity;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.util.LineAndColumn;
import org.eclipse.xtext.validation.Issue;

/** Turns what the language, the reading and the planning have to say into findings with a place. */
final class FindingMaker {

    private static final String NAMELESS = "MW900";

    private FindingMaker() { }

    /** A finding of the language; the first of its data is what mends it. */
    static Finding of(Issue issue, Path file) {
        String[] data = issue.getData();
        Optional<String> fix = data == null || data.length == 0 || data[0] == null || data[0].isBlank() ? Optional.empty() : Optional.of(data[0]);
        String code = issue.getCode() == null || !issue.getCode().startsWith("MW") ? NAMELESS : issue.getCode();
        return new Finding(code, severity(issue.getSeverity()), issue.getMessage(), file, atLeast(1, issue.getLineNumber()),
                atLeast(1, issue.getColumn()), atLeast(0, issue.getLength()), fix);
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

    /** A misunderstanding of the reading. */
    static Finding of(ReadProblem problem, Path fallback) {
        Optional<String> fix = problem.fix().isBlank() ? Optional.empty() : Optional.of(problem.fix());
        Severity severity = problem.blocking() ? Severity.ERROR : Severity.WARNING;
        Optional<INode> found = SpecPlaces.node(problem.object(), problem.feature().orElse(null));
        if (found.isEmpty() || problem.object().eResource() == null) {
            return new Finding(problem.kind().code(), severity, problem.message(), fallback, 1, 1, 0, fix);
        }
        INode node = found.get();
        LineAndColumn place = NodeModelUtils.getLineAndColumn(node, node.getOffset());
        return new Finding(problem.kind().code(), severity, problem.message(), SpecPlaces.file(problem.object().eResource().getURI()),
                place.getLine(), place.getColumn(), node.getLength(), fix);
    }

    /**
     * A fault of the planning.
     *
     * @param places of the texts
     * @param plug   where a fault is told that rests on a default alone
     */
    static Finding of(PlanFault fault, SpecPlaces places, Origin plug, Path fallback) {
        Origin.Text place = text(fault.place()).or(() -> text(plug)).orElseGet(() -> new Origin.Text("", 1, 1, ""));
        Optional<String> fix = fault.remedy().isBlank() ? Optional.empty() : Optional.of(fault.remedy());
        return new Finding(Codes.of(fault.kind()), Codes.severity(fault.kind()), words(fault), places.file(place).orElse(fallback), place.line(),
                place.column(), wordLength(place), fix);
    }

    private static Optional<Origin.Text> text(Origin origin) {
        return switch (origin) {
            case Origin.Text text -> Optional.of(text);
            case Origin.Library library -> Optional.of(library.place());
            case Origin.Assumed assumed -> Optional.empty();
        };
    }

    private static String words(PlanFault fault) {
        String figures = fault.figure().map(FindingMaker::words).orElse("")
                + fault.limit().map(limit -> (fault.figure().isPresent() ? " against " : "limit ") + words(limit)).orElse("");
        String name = fault.what().substring(fault.what().lastIndexOf(' ') + 1);
        String what = fault.message().contains(name) ? "" : fault.what() + ": ";
        return what + fault.message() + (figures.isEmpty() ? "" : " (" + figures + ")");
    }

    private static String words(PlanFault.Figure figure) {
        return Figures.words(figure.value(), figure.dimension());
    }

    /** The length of the word that begins at a place. */
    private static int wordLength(Origin.Text place) {
        int from = Math.min(place.column() - 1, place.source().length());
        int to = from;
        while (to < place.source().length() && !Character.isWhitespace(place.source().charAt(to))) {
            to++;
        }
        return to - from;
    }

    /** A line of the project file that is not understood. */
    static Finding of(ProjectFault fault) {
        return new Finding(Codes.PROJECT, Severity.WARNING, fault.message(), fault.file(), fault.line(), fault.column(), 0, Optional.empty());
    }
}
