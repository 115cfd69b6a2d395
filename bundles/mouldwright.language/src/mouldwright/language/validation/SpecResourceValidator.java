package mouldwright.language.validation;

import com.google.inject.Inject;
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

	@Override
	public List<Issue> validate(Resource resource, CheckMode mode, CancelIndicator cancelled) {
		List<Issue> all = new ArrayList<>(super.validate(resource, mode, cancelled));
		if (mode == CheckMode.ALL && resource instanceof XtextResource text && all.stream().noneMatch(issue -> issue.getSeverity() == Severity.ERROR))
			all.addAll(plans.of(text, cancelled::isCanceled));
		return inOrder(all);
	}

	/** What is found in the plans of a text that has no errors, without the findings of the text itself. */
	public List<Issue> validatePlans(XtextResource resource, CancelIndicator cancelled) {
		return inOrder(plans.of(resource, cancelled::isCanceled));
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
