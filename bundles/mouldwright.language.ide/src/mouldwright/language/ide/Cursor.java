package mouldwright.language.ide;

import com.google.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mouldwright.language.ide.GrammarMachine.Place;
import mouldwright.language.parser.RepairingParser;
import mouldwright.language.parser.Word;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.EnumLiteralDeclaration;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.parser.IParser;

/**
 * What may stand at a place of a text. The lines before it are read as the parser has mended them, the line itself as it is written, so that a word half
 * typed does not change what stands before it.
 */
final class Cursor {

    @Inject
    private GrammarMachine machine;
    @Inject
    private IParser parser;

    /**
     * A place with what may stand there.
     *
     * @param start    where the word begins that is being typed
     * @param typed    what there is of it
     * @param last     the last whole word before it
     * @param expected what may stand there
     * @param context  the part of the model it lies in; the whole document between declarations
     */
    record At(int start, String typed, Optional<Word> last, List<Expectation> expected, Optional<EObject> context) { }

    /** Looks at a place; empty inside comments and texts. */
    Optional<At> at(SpecView view, int offset) {
        String text = view.text();
        int lineStart = text.lastIndexOf('\n', offset - 1) + 1;
        if (isInComment(view, offset)) {
            return Optional.empty();
        }
        Set<Place> places = machine.start();
        ILeafNode lastLeaf = null;
        for (ILeafNode leaf : view.root().getLeafNodes()) {
            if (leaf.getOffset() >= lineStart) {
                break;
            }
            if (!leaf.isHidden()) {
                places = read(places, kind(leaf));
                lastLeaf = leaf.getLength() > 0 ? leaf : lastLeaf;
            }
        }
        List<Word> line = words(text, lineStart, offset, lastLeaf);
        Word typed = line.isEmpty() ? null : line.getLast();
        if (isUnclosed(line)) {
            return Optional.empty();
        }
        boolean partial = typed != null && typed.end() == offset && !typed.isHidden() && isWord(typed);
        List<Word> whole = line.stream().filter(word -> !word.isHidden() && !(partial && word == typed)).toList();
        for (Word word : whole) {
            places = read(places, word.kind());
        }
        List<Expectation> expected = new ArrayList<>();
        machine.steps(places, (step, frame) -> expected.add(new Expectation(step.kind(), step.element(), frame)));
        Optional<Word> last = whole.isEmpty() ? Optional.ofNullable(lastLeaf).map(leaf -> new Word(kind(leaf), leaf.getOffset(), leaf.getText())) : Optional.of(whole.getLast());
        return Optional.of(new At(partial ? typed.offset() : offset, partial ? typed.text() : "", last, expected, context(view, last)));
    }

    /** Words from the start of a line. A number at the end of the line before may have its unit here. */
    private List<Word> words(String text, int from, int to, ILeafNode before) {
        List<Word> result = new ArrayList<>();
        for (Word word : ((RepairingParser) parser).words(text.substring(from, to))) {
            result.add(new Word(word.kind(), word.offset() + from, word.text()));
        }
        return result;
    }

    /** Words that the parser left out lie in hidden leaves too: only what begins like a comment is one. */
    private static boolean isInComment(SpecView view, int offset) {
        ILeafNode leaf = offset == 0 ? null : NodeModelUtils.findLeafNodeAtOffset(view.root(), offset - 1);
        if (leaf == null || !leaf.isHidden() || leaf.getOffset() == offset) {
            return false;
        }
        boolean line = leaf.getText().startsWith("//") && !view.text().substring(leaf.getOffset(), offset).contains("\n");
        return line || leaf.getText().startsWith("/*") && (leaf.getEndOffset() > offset || !leaf.getText().endsWith("*/"));
    }

    private static boolean isUnclosed(List<Word> line) {
        return line.stream().anyMatch(word -> word.kind().equals("ANY_OTHER") && word.text().equals("\""));
    }

    private static boolean isWord(Word word) {
        char first = word.text().charAt(0);
        return Character.isLetterOrDigit(first) || first == '_' || first == '\u00b0';
    }

    /** A word that cannot stand where it stands is passed over. */
    private Set<Place> read(Set<Place> places, String kind) {
        Set<Place> next = machine.after(places, kind);
        return next.isEmpty() ? places : new LinkedHashSet<>(next);
    }

    private static Optional<EObject> context(SpecView view, Optional<Word> last) {
        Optional<EObject> inside = last.map(word -> NodeModelUtils.findLeafNodeAtOffset(view.root(), Math.max(word.offset(), word.end() - 1)))
                .map(NodeModelUtils::findActualSemanticObjectFor);
        return inside.or(() -> view.document().map(EObject.class::cast));
    }

    private static String kind(ILeafNode leaf) {
        return switch (leaf.getGrammarElement()) {
            case Keyword keyword -> "'" + keyword.getValue() + "'";
            case EnumLiteralDeclaration literal -> "'" + literal.getLiteral().getValue() + "'";
            case RuleCall call -> call.getRule().getName();
            case CrossReference reference when reference.getTerminal() instanceof RuleCall call -> call.getRule().getName();
            case null, default -> "ANY_OTHER";
        };
    }
}
