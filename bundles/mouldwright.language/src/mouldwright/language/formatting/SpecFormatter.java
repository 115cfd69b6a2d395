package mouldwright.language.formatting;

import com.google.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.xtext.formatting2.FormatterRequest;
import org.eclipse.xtext.formatting2.IFormatter2;
import org.eclipse.xtext.formatting2.regionaccess.IComment;
import org.eclipse.xtext.formatting2.regionaccess.IHiddenRegion;
import org.eclipse.xtext.formatting2.regionaccess.IHiddenRegionPart;
import org.eclipse.xtext.formatting2.regionaccess.ISemanticRegion;
import org.eclipse.xtext.formatting2.regionaccess.ITextRegionAccess;
import org.eclipse.xtext.formatting2.regionaccess.ITextReplacement;
import org.eclipse.xtext.util.ITextRegion;

/**
 * The one layout of a spec: one property and one point a line, four spaces a block, nothing aligned across lines, numbers and blank lines left as they
 * are, so that a change shows as the lines that changed. A block of a single item written on one line stays there.
 */
public class SpecFormatter implements IFormatter2 {

	private static final String INDENT = "    ";
	private static final int WIDTH = 110;

	@Inject
	private ItemStarts starts;

	@Override
	public List<ITextReplacement> format(FormatterRequest request) {
		ITextRegionAccess access = request.getTextRegionAccess();
		List<ITextReplacement> result = new ArrayList<>();
		ISemanticRegion word = access.regionForRootEObject().getPreviousHiddenRegion().getNextSemanticRegion();
		String lineEnd = access.regionForDocument().getText().contains("\r\n") ? "\r\n" : "\n";
		if (word == null)
			return result;
		int depth = 0;
		int inlineUntil = -1;
		for (; word != null; word = word.getNextSemanticRegion()) {
			ISemanticRegion before = word.getPreviousSemanticRegion();
			boolean opened = before != null && is(before, "{");
			if (opened && isInline(before))
				inlineUntil = closing(before).getOffset();
			if (is(word, "}"))
				depth--;
			boolean inline = word.getOffset() <= inlineUntil;
			boolean newLine = before != null && !inline && (starts.contains(word) || opened || is(word, "}")) && !(opened && is(word, "}"));
			Gap gap = new Gap(word.getPreviousHiddenRegion(), depth, is(word, "}") ? depth + 1 : depth, newLine, before == null, space(before, word));
			replace(request, result, word.getPreviousHiddenRegion(), gap.text(lineEnd));
			if (is(word, "{"))
				depth++;
			if (word.getNextSemanticRegion() == null)
				replace(request, result, word.getNextHiddenRegion(), new Gap(word.getNextHiddenRegion(), 0, 0, true, false, "").text(lineEnd));
		}
		return result;
	}

	private static void replace(FormatterRequest request, List<ITextReplacement> result, IHiddenRegion gap, String text) {
		if (text.equals(gap.getText()))
			return;
		for (ITextRegion region : request.getRegions())
			if (gap.getOffset() >= region.getOffset() && gap.getEndOffset() <= region.getOffset() + region.getLength()) {
				result.add(gap.replaceWith(text));
				return;
			}
		if (request.getRegions().isEmpty())
			result.add(gap.replaceWith(text));
	}

	private static boolean is(ISemanticRegion word, String mark) {
		return word.getLength() == 1 && word.getText().equals(mark);
	}

	private static ISemanticRegion closing(ISemanticRegion open) {
		int depth = 0;
		ISemanticRegion word = open;
		while (word.getNextSemanticRegion() != null) {
			depth += is(word, "{") ? 1 : is(word, "}") ? -1 : 0;
			if (depth == 0)
				return word;
			word = word.getNextSemanticRegion();
		}
		return word;
	}

	/** Whether a block stands on one line, holds one item and no comment, and fits. */
	private boolean isInline(ISemanticRegion open) {
		ISemanticRegion close = closing(open);
		int items = 0;
		int length = 0;
		for (ISemanticRegion word = open; word != close; word = word.getNextSemanticRegion()) {
			IHiddenRegion gap = word.getNextHiddenRegion();
			if (gap.containsComment() || gap.isMultiline() || word != open && is(word, "{"))
				return false;
			ISemanticRegion next = word.getNextSemanticRegion();
			if (next != close && (word == open || starts.contains(next)))
				items++;
			length += word.getLength() + 1;
		}
		return items <= 1 && length < WIDTH;
	}

	private static String space(ISemanticRegion before, ISemanticRegion word) {
		if (before == null)
			return "";
		String left = before.getText();
		String right = word.getText();
		boolean call = right.equals("(") && word.getSemanticElement() instanceof mouldwright.model.Call;
		boolean sign = left.equals("-") && !(before.getSemanticElement() instanceof mouldwright.model.Binary);
		boolean tight = left.equals("(") || right.equals(")") || right.equals(",") || call || sign;
		return tight ? "" : " ";
	}

	/** What stands between two words: space, line ends and comments. */
	private record Gap(IHiddenRegion region, int indent, int commentIndent, boolean newLine, boolean atStart, String space) {

		String text(String lineEnd) {
			StringBuilder text = new StringBuilder();
			int lines = 0;
			boolean ownLine = atStart;
			boolean comments = false;
			for (IHiddenRegionPart part : region.getParts()) {
				if (part instanceof IComment comment) {
					String written = comment.getText().stripTrailing();
					if (lines > 0 || atStart && comments) {
						text.append(lineEnd.repeat(Math.max(1, lines))).append(INDENT.repeat(commentIndent));
						ownLine = true;
					} else if (!atStart) {
						text.append(' ');
					}
					text.append(written);
					comments = true;
					lines = written.startsWith("//") ? 1 : 0;
				} else {
					lines += (int) part.getText().chars().filter(c -> c == '\n').count();
				}
			}
			boolean last = region.getNextSemanticRegion() == null;
			if (last)
				return text.append(lineEnd).toString();
			if (atStart && !comments)
				return "";
			if (newLine || comments && (lines > 0 || ownLine))
				return text.append(lineEnd.repeat(Math.max(1, lines))).append(INDENT.repeat(indent)).toString();
			return text.append(comments ? " " : space).toString();
		}
	}
}
