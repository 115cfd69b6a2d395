package mouldwright.language.validation;

import com.google.inject.Inject;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.diagnostics.Severity;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;
import org.eclipse.xtext.validation.Issue;
import org.eclipse.xtext.validation.ResourceValidatorImpl;

/** All findings of a file in the order of its text: those of the text itself, then, where it has no errors, those of its plans. A line that could not be read as written has that one finding: what else is wrong with it follows from it. */
public class SpecResourceValidator extends ResourceValidatorImpl {

	private static final String UNREADABLE = "MW901";

	@Inject
	private PlanFindings plans;

	@Inject
	private Clock clock;

	@Override
	public List<Issue> validate(Resource resource, CheckMode mode, CancelIndicator cancelled) {
		AcceptBook accepted = AcceptBook.of(resource, clock);
		List<Issue> all = new ArrayList<>(text(resource, mode, accepted, cancelled));
		if (mode == CheckMode.ALL && resource instanceof XtextResource text && all.stream().noneMatch(issue -> issue.getSeverity() == Severity.ERROR))
			all.addAll(plans.of(text, accepted, cancelled::isCanceled));
		return inOrder(all);
	}

	/** What is found in a text, without its plans and without what its plugs accept.
	 *  @param accepted is told what was met */
	public List<Issue> validateText(XtextResource resource, AcceptBook accepted, CancelIndicator cancelled) {
		return inOrder(text(resource, CheckMode.NORMAL_AND_FAST, accepted, cancelled));
	}

	/** What is found in the plans of a text that has no errors, without the findings of the text itself.
	 *  @param accepted what its plugs accept, and what of it was met in the text and the libraries it uses */
	public List<Issue> validatePlans(XtextResource resource, AcceptBook accepted, CancelIndicator cancelled) {
		return inOrder(plans.of(resource, accepted, cancelled::isCanceled));
	}

	private List<Issue> text(Resource resource, CheckMode mode, AcceptBook accepted, CancelIndicator cancelled) {
		return super.validate(resource, mode, cancelled).stream()
				.filter(issue -> issue.getOffset() == null || !accepted.acceptsAt(issue.getOffset(), issue.getCode() == null ? "" : issue.getCode(), issue.getSeverity() == Severity.ERROR)).toList();
	}

	private static List<Issue> inOrder(List<Issue> all) {
		Set<Integer> unreadable = new HashSet<>();
		for (Issue issue : all)
			if (UNREADABLE.equals(issue.getCode()))
				unreadable.add(issue.getLineNumber());
		List<Issue> result = new ArrayList<>();
		Set<String> seen = new HashSet<>();
		for (Issue issue : all) {
			boolean follows = unreadable.contains(issue.getLineNumber()) && !UNREADABLE.equals(issue.getCode());
			if (!follows && seen.add(issue.getOffset() + " " + issue.getCode() + " " + issue.getMessage()))
				result.add(issue);
		}
		result.sort(Comparator.comparing(Issue::getOffset, Comparator.nullsFirst(Comparator.naturalOrder())).thenComparing(Issue::getCode, Comparator.nullsFirst(Comparator.naturalOrder())));
		return result;
	}
}
