package mouldwright.language.ide;

import com.google.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import mouldwright.language.parser.RepairingParser;
import mouldwright.language.parser.Word;
import mouldwright.model.Named;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.parser.IParser;

/** What each word of a text is, for colouring it. */
public final class Colours {

    /** What a word is. */
    public enum Kind {
        /** A word of the language. */
        KEYWORD,
        /** A number or a date. */
        NUMBER,
        /** A unit. */
        UNIT,
        /** A text in quotes. */
        TEXT,
        /** A comment. */
        COMMENT,
        /** Something a file declares: a material, a schedule, a plug. */
        DECLARATION,
        /** Something a plug declares: a station, a line, a named amount. */
        PART,
        /** The name of a library. */
        LIBRARY,
        /** A sign of a formula. */
        SIGN
    }

    /** A coloured word. @param declares whether the name is given here */
    public record Coloured(int offset, int length, Kind kind, boolean declares) { }

    @Inject
    private IParser parser;

    /** The coloured words of a text, in its order. */
    public List<Coloured> of(SpecView view) {
        List<Coloured> result = new ArrayList<>();
        for (ILeafNode leaf : view.root().getLeafNodes()) {
            if (leaf.getLength() > 0 && !leaf.getText().isBlank()) {
                add(leaf, result);
            }
        }
        return result;
    }

    private void add(ILeafNode leaf, List<Coloured> result) {
        String rule = leaf.getGrammarElement() instanceof RuleCall call ? call.getRule().getName() : "";
        if (leaf.isHidden()) {
            // Words left out by the parser lie in hidden leaves too: only what begins like a comment is one.
            String text = leaf.getText();
            if (text.startsWith("//") || text.startsWith("/*")) {
                result.add(new Coloured(leaf.getOffset(), text.stripTrailing().length(), Kind.COMMENT, false));
            }
            return;
        }
        Kind kind = switch (rule) {
            case "NUMBER", "DATE" -> Kind.NUMBER;
            case "UNIT" -> Kind.UNIT;
            case "STRING" -> Kind.TEXT;
            default -> null;
        };
        if (kind != null) {
            result.add(new Coloured(leaf.getOffset(), leaf.getLength(), kind, false));
            return;
        }
        name(leaf, result);
    }

    private void name(ILeafNode leaf, List<Coloured> result) {
        EReference reference = reference(leaf);
        if (reference != null) {
            Kind kind = mouldwright.model.PlugPackage.Literals.DECLARATION.isSuperTypeOf(reference.getEReferenceType()) ? Kind.DECLARATION : Kind.PART;
            result.add(new Coloured(leaf.getOffset(), leaf.getLength(), kind, false));
            return;
        }
        Word word = ((RepairingParser) parser).words(leaf.getText()).getFirst();
        EObject owner = SpecView.owner(leaf).orElse(null);
        if (isName(leaf)) {
            Kind kind = owner instanceof mouldwright.model.Declaration ? Kind.DECLARATION : owner instanceof Named || owner instanceof mouldwright.model.StationRow ? Kind.PART : Kind.LIBRARY;
            result.add(new Coloured(leaf.getOffset(), leaf.getLength(), kind, kind != Kind.LIBRARY));
        } else if (word.kind().startsWith("'") && Character.isLetter(word.text().charAt(0))) {
            result.add(new Coloured(leaf.getOffset(), leaf.getLength(), Kind.KEYWORD, false));
        } else if (word.kind().equals("ID")) {
            result.add(new Coloured(leaf.getOffset(), leaf.getLength(), owner instanceof Named ? Kind.PART : Kind.KEYWORD, owner instanceof Named));
        } else if ("+-*/=".contains(leaf.getText())) {
            result.add(new Coloured(leaf.getOffset(), leaf.getLength(), Kind.SIGN, false));
        }
    }

    private static boolean isDatatype(INode node) {
        return node.getGrammarElement() instanceof EObject element && GrammarUtil.containingRule(element) instanceof org.eclipse.xtext.ParserRule rule
                && GrammarUtil.isDatatypeRule(rule);
    }

    private static boolean isName(ILeafNode leaf) {
        EObject element = leaf.getGrammarElement();
        String rule = GrammarUtil.containingRule(element) == null ? "" : GrammarUtil.containingRule(element).getName();
        return rule.equals("Name") || rule.equals("QualifiedName");
    }

    /** What a name refers to, up through the rules that only spell names. */
    private static EReference reference(ILeafNode leaf) {
        for (INode node = leaf; node != null && node.getGrammarElement() != null; node = node.getParent()) {
            CrossReference crossed = EcoreUtil2.getContainerOfType(node.getGrammarElement(), CrossReference.class);
            if (crossed != null) {
                return GrammarUtil.getReference(crossed);
            }
            if (!isDatatype(node)) {
                return null;
            }
        }
        return null;
    }
}
