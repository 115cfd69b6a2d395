package mouldwright.language.remedy;

import com.google.inject.Inject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import mouldwright.check.Fix;
import mouldwright.check.Remedy;
import mouldwright.check.TextEdit;
import mouldwright.check.TextFix;
import mouldwright.plan.spec.Origin;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.resource.XtextResource;

/**
 * Turns what is to be done to a spec into edits of its text: the smallest that do it, laid out as what stands beside them. A fix that would reach into
 * another file is none, since who mends a spec means that one.
 */
public final class RemedyWriter {

	@Inject
	private Properties properties;

	/**
	 * A fix as edits.
	 *
	 * @param resource the text
	 * @param file     its name, as places in it have it
	 * @param fix      what is to be done
	 * @return empty where a part of it lies outside this text
	 */
	public Optional<TextFix> write(XtextResource resource, String file, Fix fix) {
		SpecText text = new SpecText(resource);
		List<TextEdit> edits = new ArrayList<>();
		for (Remedy remedy : fix.remedies()) {
			if (remedy instanceof Remedy.Use(String library)) {
				text.use(library).ifPresent(edit -> add(edits, edit));
				continue;
			}
			List<TextEdit> one = edits(text, file, remedy);
			if (one.isEmpty())
				return Optional.empty();
			for (TextEdit edit : one)
				add(edits, edit);
		}
		return Optional.of(new TextFix(fix.title(), fix.safe(), edits));
	}

	/** What is put in at one place is put in one after the other. */
	private static void add(List<TextEdit> edits, TextEdit edit) {
		for (int i = 0; i < edits.size(); i++)
			if (edits.get(i).offset() == edit.offset() && edits.get(i).length() == 0 && edit.length() == 0) {
				edits.set(i, new TextEdit(edit.offset(), 0, edits.get(i).text() + edit.text()));
				return;
			}
		edits.add(edit);
	}

	/** Takes a part of a text out, with its lines where it has them to itself. */
	public TextEdit removal(XtextResource resource, INode node) {
		return new SpecText(resource).removal(node.getOffset(), node.getEndOffset());
	}

	private List<TextEdit> edits(SpecText text, String file, Remedy remedy) {
		return switch (remedy) {
			case Remedy.Insert(Origin beside, Remedy.Side side, String snippet) -> text.node(beside, file).map(node -> List.of(insert(text, node, side, snippet))).orElse(List.of());
			case Remedy.State(Origin block, String property, String snippet) -> text.node(block, file).map(node -> List.of(state(text, node, property, snippet))).orElse(List.of());
			case Remedy.Replace(Origin place, String snippet) -> text.node(place, file)
					.map(node -> List.of(new TextEdit(node.getOffset(), node.getLength(), text.laidOut(node, snippet, text.indent(node))))).orElse(List.of());
			case Remedy.Remove(Origin place) -> text.node(place, file).map(node -> List.of(text.removal(node.getOffset(), node.getEndOffset()))).orElse(List.of());
			case Remedy.Use use -> List.of();
			case Remedy.Reorder(List<Origin> order) -> reorder(text, file, order);
		};
	}

	private static TextEdit insert(SpecText text, INode node, Remedy.Side side, String snippet) {
		return switch (side) {
			case BEHIND -> new TextEdit(node.getEndOffset(), 0, " " + text.laidOut(node, snippet, text.indent(node)));
			case BEFORE -> text.beginsLine(node) ? new TextEdit(node.getOffset(), 0, text.laidOut(node, snippet, text.indent(node)) + text.lineEnd() + text.indent(node))
					: new TextEdit(node.getOffset(), 0, snippet + " ");
			case AFTER -> text.beginsLine(node) ? new TextEdit(text.behindComment(node.getEndOffset()), 0, text.lineEnd() + text.indent(node) + text.laidOut(node, snippet, text.indent(node)))
					: new TextEdit(node.getEndOffset(), 0, " " + text.laidOut(node, snippet, text.indent(node)));
			case INSIDE -> text.lastIn(node, snippet);
		};
	}

	private TextEdit state(SpecText text, INode block, String property, String snippet) {
		return properties.find(text.resource(), block, property)
				.map(there -> new TextEdit(there.getOffset(), there.getLength(), text.laidOut(block, snippet, text.indentAt(there.getOffset())))).orElseGet(() -> text.lastIn(block, snippet));
	}

	/** Each place takes the words that are to stand there. */
	private static List<TextEdit> reorder(SpecText text, String file, List<Origin> order) {
		List<INode> wanted = order.stream().map(place -> text.node(place, file)).flatMap(Optional::stream).toList();
		if (wanted.size() < order.size())
			return List.of();
		List<INode> places = wanted.stream().sorted(Comparator.comparingInt(INode::getOffset)).toList();
		List<TextEdit> edits = new ArrayList<>();
		for (int i = 0; i < places.size(); i++)
			if (places.get(i) != wanted.get(i))
				edits.add(new TextEdit(places.get(i).getOffset(), places.get(i).getLength(), text.of(wanted.get(i))));
		return edits;
	}
}
