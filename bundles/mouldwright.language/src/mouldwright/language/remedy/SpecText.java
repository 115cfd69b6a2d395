package mouldwright.language.remedy;

import java.util.Optional;
import java.util.regex.Pattern;
import mouldwright.check.TextEdit;
import mouldwright.model.Document;
import mouldwright.model.Plug;
import mouldwright.plan.spec.Origin;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;

/** The text of a spec with its layout: what stands where, and how it is indented. */
final class SpecText {

	private static final String STEP = "    ";
	private static final Pattern MILLIMETRES = Pattern.compile("(?<=[0-9]) mm\\b");

	private final XtextResource resource;
	private final ICompositeNode root;
	private final String text;

	SpecText(XtextResource resource) {
		this.resource = resource;
		this.root = resource.getParseResult().getRootNode();
		this.text = root.getText();
	}

	XtextResource resource() {
		return resource;
	}

	String lineEnd() {
		return text.contains("\r\n") ? "\r\n" : "\n";
	}

	String of(INode node) {
		return text.substring(node.getOffset(), node.getEndOffset());
	}

	/** The whole of what begins at a place: a point, and not only its first amount. Empty where the place is in another file. */
	Optional<INode> node(Origin place, String file) {
		if (!(place instanceof Origin.Text there) || !there.file().equals(file))
			return Optional.empty();
		int offset = 0;
		for (int line = 1; line < there.line(); line++)
			offset = text.indexOf('\n', offset) + 1;
		ILeafNode leaf = NodeModelUtils.findLeafNodeAtOffset(root, offset + there.column() - 1);
		return Optional.ofNullable(leaf).map(SpecText::widest);
	}

	private static INode widest(ILeafNode leaf) {
		INode best = leaf;
		for (EObject part = NodeModelUtils.findActualSemanticObjectFor(leaf); part != null && part.eContainer() != null; part = part.eContainer()) {
			INode node = NodeModelUtils.findActualNodeFor(part);
			if (node == null || node.getOffset() != leaf.getOffset())
				break;
			best = node;
		}
		return best;
	}

	/** What stands before the first word of a line. */
	String indent(INode node) {
		return indentAt(node.getOffset());
	}

	String indentAt(int offset) {
		int start = text.lastIndexOf('\n', offset - 1) + 1;
		int end = start;
		while (end < text.length() && (text.charAt(end) == ' ' || text.charAt(end) == '\t'))
			end++;
		return text.substring(start, end);
	}

	boolean beginsLine(INode node) {
		return text.substring(text.lastIndexOf('\n', node.getOffset() - 1) + 1, node.getOffset()).isBlank();
	}

	/** Where a line's words end whose last ones end at a place: behind a comment that follows them. */
	int behindComment(int offset) {
		int end = text.indexOf('\n', offset);
		String rest = text.substring(offset, end < 0 ? text.length() : end);
		return rest.strip().startsWith("//") ? offset + rest.stripTrailing().length() : offset;
	}

	/** A snippet as it stands in its plug: with its indent, and with bare numbers where these are millimetres. */
	String laidOut(INode where, String snippet, String indent) {
		Plug plug = EcoreUtil2.getContainerOfType(NodeModelUtils.findActualSemanticObjectFor(where), Plug.class);
		boolean bare = plug != null && (plug.getUnits() == null || plug.getUnits().equals("mm"));
		String words = bare ? MILLIMETRES.matcher(snippet).replaceAll("") : snippet;
		return words.replace("\n", lineEnd() + indent);
	}

	/** Puts a snippet in as the last of a block. */
	TextEdit lastIn(INode block, String snippet) {
		int close = block.getEndOffset() - 1;
		while (text.charAt(close) != '}')
			close--;
		int line = text.lastIndexOf('\n', close) + 1;
		String before = text.substring(line, close);
		if (before.isBlank())
			return new TextEdit(line, 0, before + STEP + laidOut(block, snippet, before + STEP) + lineEnd());
		int open = text.indexOf('{', block.getOffset());
		if (text.substring(open + 1, close).isBlank()) {
			String indent = indentAt(block.getOffset());
			return new TextEdit(open + 1, close - open - 1, lineEnd() + indent + STEP + laidOut(block, snippet, indent + STEP) + lineEnd() + indent);
		}
		return new TextEdit(close, 0, (Character.isWhitespace(text.charAt(close - 1)) ? "" : " ") + laidOut(block, snippet, indentAt(close)) + " ");
	}

	/** Uses a library; empty where the text does already. */
	Optional<TextEdit> use(String library) {
		Document document = (Document) resource.getContents().getFirst();
		if (document.getUses().stream().anyMatch(use -> library.equals(use.getLibrary())) || document.getHeaders().stream().anyMatch(own -> library.equals(own.getName())))
			return Optional.empty();
		Optional<INode> last = document.getUses().stream().map(NodeModelUtils::findActualNodeFor).map(INode.class::cast).reduce((before, after) -> after);
		if (last.isPresent())
			return Optional.of(new TextEdit(behindComment(last.get().getEndOffset()), 0, lineEnd() + "use " + library));
		int first = document.getDeclarations().isEmpty() ? 0 : NodeModelUtils.findActualNodeFor(document.getDeclarations().getFirst()).getOffset();
		return Optional.of(new TextEdit(first, 0, "use " + library + lineEnd() + lineEnd()));
	}

	/** Takes a stretch out, with the whole of its lines where nothing else stands in them. */
	TextEdit removal(int from, int to) {
		int start = text.lastIndexOf('\n', from - 1) + 1;
		int behind = behindComment(to);
		int end = text.indexOf('\n', behind);
		boolean first = text.substring(start, from).isBlank();
		boolean last = text.substring(behind, end < 0 ? text.length() : end).isBlank();
		if (first && last)
			return new TextEdit(start, (end < 0 ? text.length() : end + 1) - start, "");
		int gap = from;
		while (gap > start && Character.isWhitespace(text.charAt(gap - 1)))
			gap--;
		if (first) {
			int next = to;
			while (Character.isWhitespace(text.charAt(next)))
				next++;
			return new TextEdit(from, next - from, "");
		}
		return new TextEdit(gap, to - gap, "");
	}
}
