package mouldwright.language.remedy;

import java.util.List;
import mouldwright.check.TextFix;
import org.eclipse.xtext.validation.Issue;

/** A finding that brings with it what mends it in the text. */
public final class MendableIssue extends Issue.IssueImpl {

	private final List<TextFix> fixes;

	/** A finding whose place and words are still to be set. */
	public MendableIssue(List<TextFix> fixes) {
		this.fixes = List.copyOf(fixes);
	}

	/** Ways to mend it, the best first. */
	public List<TextFix> fixes() {
		return fixes;
	}
}
