package mouldwright.language.remedy;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mouldwright.check.TextEdit;
import mouldwright.check.TextFix;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.validation.Issue;

/** What mends findings of the text itself: their remedy names the words that stand there instead, or says that they go. */
final class WordFixes {

	/** A remedy that is a fix: one code, what is to be written. */
	private static final Pattern WRITE = Pattern.compile("write `([^`]+)`");
	/** A remedy by which the words found go. */
	static final String TAKE_OUT = "take it out";
	/** Read with the point it wants, so nothing changes in writing it so. */
	private static final String COMMA = "MW908";

	List<TextFix> of(XtextResource resource, Issue issue) {
		String remedy = issue.getData() == null || issue.getData().length == 0 || issue.getData()[0] == null ? "" : issue.getData()[0];
		if (issue.getOffset() == null || issue.getLength() == null)
			return List.of();
		Matcher write = WRITE.matcher(remedy);
		if (write.matches())
			return List.of(new TextFix(remedy, COMMA.equals(issue.getCode()), List.of(instead(resource, issue, write.group(1)))));
		if (remedy.equals(TAKE_OUT))
			return List.of(new TextFix(remedy, true, List.of(new SpecText(resource).removal(issue.getOffset(), issue.getOffset() + issue.getLength()))));
		return List.of();
	}

	/** What is put in where nothing stood is set off from the words beside it. */
	private static TextEdit instead(XtextResource resource, Issue issue, String words) {
		String text = resource.getParseResult().getRootNode().getText();
		int offset = issue.getOffset();
		boolean close = issue.getLength() == 0 && offset > 0 && !Character.isWhitespace(text.charAt(offset - 1));
		boolean tight = issue.getLength() == 0 && offset < text.length() && !Character.isWhitespace(text.charAt(offset));
		return new TextEdit(offset, issue.getLength(), (close ? " " : "") + words + (tight ? " " : ""));
	}
}
