package mouldwright.language.validation;

import com.google.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import mouldwright.check.Finding;
import mouldwright.check.TextFix;
import mouldwright.language.plan.NodePlaces;
import mouldwright.language.plan.Plans;
import mouldwright.language.remedy.MendableIssue;
import mouldwright.language.remedy.RemedyWriter;
import mouldwright.model.Accept;
import mouldwright.model.Document;
import mouldwright.model.Plug;
import mouldwright.model.PlugPackage;
import mouldwright.plan.read.ReadProblem;
import mouldwright.plan.spec.Origin;
import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.diagnostics.Severity;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.LineAndColumn;
import org.eclipse.xtext.validation.Issue;

/** What the checks find in the plans of a file without errors, as findings at their places in its text. */
class PlanFindings {

	/** Code of an acceptance that accepts nothing. */
	private static final String NOT_NEEDED = "MW923";

	/** Code of an acceptance whose day has passed. */
	private static final String OVER = "MW935";

	@Inject
	private Plans plans;
	@Inject
	private Clock clock;
	@Inject
	private RemedyWriter writer;

	List<Issue> of(XtextResource resource, BooleanSupplier cancelled) {
		List<Issue> result = new ArrayList<>();
		if (resource.getContents().isEmpty() || !(resource.getContents().get(0) instanceof Document document))
			return result;
		for (Plug plug : Plans.plugs(document)) {
			Plans.Planned planned = plans.of(plug, cancelled);
			if (planned.plan().isEmpty())
				planned.problems().stream().filter(ReadProblem::blocking).forEach(problem -> result.add(issue(resource, plug, problem)));
			NodePlaces places = new NodePlaces();
			String own = places.of(plug, null).file();
			for (Finding finding : planned.findings())
				if (!isAccepted(plug, finding))
					result.add(issue(resource, plug, own, finding));
			plug.getAccepts().stream().filter(accept -> isOver(accept) && planned.findings().stream().anyMatch(finding -> finding.code().equals(accept.getCode())))
					.forEach(accept -> result.add(at(resource, NodePlaces.node(accept, PlugPackage.Literals.ACCEPT__UNTIL), OVER, Severity.WARNING,
							"`" + accept.getCode() + "` was accepted until " + accept.getUntil(), "mend it, or accept it until another day", List.of())));
			if (planned.plan().isPresent())
				plug.getAccepts().stream().filter(accept -> planned.findings().stream().noneMatch(finding -> finding.code().equals(accept.getCode())))
						.forEach(accept -> result.add(notNeeded(resource, accept)));
		}
		return result;
	}

	private Issue notNeeded(XtextResource resource, Accept accept) {
		INode node = NodePlaces.node(accept, null);
		TextFix out = new TextFix("take it out", true, List.of(writer.removal(resource, node)));
		return at(resource, node, NOT_NEEDED, Severity.WARNING, "nothing is found that `" + accept.getCode() + "` would accept", "take it out", List.of(out));
	}

	/** Errors cannot be accepted; anything else can, with a reason, while its date has not passed. */
	private boolean isAccepted(Plug plug, Finding finding) {
		return finding.severity() != mouldwright.check.Severity.ERROR && plug.getAccepts().stream()
				.anyMatch(accept -> finding.code().equals(accept.getCode()) && !isOver(accept));
	}

	private boolean isOver(Accept accept) {
		return accept.getUntil() != null && LocalDate.parse(accept.getUntil()).isBefore(LocalDate.now(clock));
	}

	private static Issue issue(XtextResource resource, Plug plug, ReadProblem problem) {
		INode node = NodePlaces.node(problem.object(), problem.feature().orElse(null));
		boolean here = problem.object().eResource() == resource && node != null;
		String message = here ? problem.message() : problem.message() + " (" + new NodePlaces().of(problem.object(), problem.feature().orElse(null)).words() + ")";
		return at(resource, here ? node : name(plug), problem.kind().code(), Severity.ERROR, message, problem.fix(), List.of());
	}

	private Issue issue(XtextResource resource, Plug plug, String own, Finding finding) {
		Severity severity = switch (finding.severity()) {
			case ERROR -> Severity.ERROR;
			case WARNING -> Severity.WARNING;
			case INFO -> Severity.INFO;
		};
		if (finding.place() instanceof Origin.Text text && text.file().equals(own))
			return at(resource, nodeAt(resource, text), finding.code(), severity, finding.message(), finding.remedy(), fixes(resource, own, finding));
		return at(resource, name(plug), finding.code(), severity, finding.message() + " (" + finding.place().words() + ")", finding.remedy(), fixes(resource, own, finding));
	}

	private List<TextFix> fixes(XtextResource resource, String own, Finding finding) {
		return finding.fixes().stream().map(fix -> writer.write(resource, own, fix)).flatMap(Optional::stream).toList();
	}

	private static INode name(Plug plug) {
		return NodePlaces.node(plug, PlugPackage.Literals.NAMED__NAME);
	}

	private static INode nodeAt(XtextResource resource, Origin.Text place) {
		ICompositeNode root = resource.getParseResult().getRootNode();
		String text = root.getText();
		int offset = 0;
		for (int line = 1; line < place.line(); line++)
			offset = text.indexOf('\n', offset) + 1;
		return NodeModelUtils.findLeafNodeAtOffset(root, Math.min(text.length(), offset + place.column() - 1));
	}

	private static Issue at(XtextResource resource, INode node, String code, Severity severity, String message, String fix, List<TextFix> fixes) {
		MendableIssue issue = new MendableIssue(fixes);
		INode words = node == null ? resource.getParseResult().getRootNode() : node;
		LineAndColumn from = NodeModelUtils.getLineAndColumn(words, words.getOffset());
		issue.setSeverity(severity);
		issue.setCode(code);
		issue.setMessage(message);
		issue.setOffset(words.getOffset());
		issue.setLength(firstLine(words));
		issue.setLineNumber(from.getLine());
		issue.setColumn(from.getColumn());
		issue.setLineNumberEnd(from.getLine());
		issue.setColumnEnd(from.getColumn() + issue.getLength());
		issue.setUriToProblem(URI.createURI(resource.getURI() + "#/"));
		issue.setData(fix.isEmpty() ? new String[0] : new String[] { fix });
		return issue;
	}

	private static int firstLine(INode node) {
		String text = node.getText().stripLeading();
		int end = text.indexOf('\n');
		return Math.max(1, Math.min(node.getLength(), end < 0 ? text.length() : end));
	}
}
