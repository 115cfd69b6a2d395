package mouldwright.language.remedy;

import com.google.inject.Inject;
import java.util.List;
import mouldwright.check.TextFix;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.validation.Issue;

/** The ways to mend a finding, as edits of the text it was found in. */
public final class Fixes {

	@Inject
	private WordFixes words;

	/**
	 * What mends a finding.
	 *
	 * @param resource the text it was found in, unchanged since
	 * @param issue    the finding, as the validator made it
	 * @return the best first; none where nothing can be said for sure
	 */
	public List<TextFix> of(XtextResource resource, Issue issue) {
		return issue instanceof MendableIssue mendable ? mendable.fixes() : words.of(resource, issue);
	}
}
