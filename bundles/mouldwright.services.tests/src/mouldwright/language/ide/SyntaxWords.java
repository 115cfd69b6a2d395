package mouldwright.language.ide;

import java.util.List;
import java.util.stream.Collectors;
import mouldwright.plan.read.Expected;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.Action;
import org.eclipse.xtext.Alternatives;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.EnumLiteralDeclaration;
import org.eclipse.xtext.EnumRule;
import org.eclipse.xtext.Group;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.ParserRule;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.TerminalRule;

/** The syntax of a rule in one line, as it is typed: keywords bare, what is filled in between angle brackets, what may be left out
 *  between square ones. */
final class SyntaxWords {

    private final EClass owner;

    /** @param owner what the rule makes, whose properties say what their figures measure */
    SyntaxWords(EClass owner) {
        this.owner = owner;
    }

    String of(AbstractElement element) {
        String words = switch (element) {
            case Keyword keyword -> keyword.getValue();
            case Group group -> join(group.getElements(), " ");
            case Alternatives alternatives -> join(alternatives.getElements(), " | ");
            case Assignment assignment -> filled(assignment);
            case RuleCall call -> called(call.getRule());
            case Action ignored -> "";
            default -> throw new IllegalStateException("no words for " + element.eClass().getName());
        };
        return words.isEmpty() ? "" : repeated(element, words);
    }

    private String join(List<AbstractElement> elements, String between) {
        return elements.stream().map(this::of).filter(words -> !words.isEmpty()).collect(Collectors.joining(between));
    }

    private static String repeated(AbstractElement element, String words) {
        boolean several = element instanceof Alternatives alternatives && alternatives.getElements().size() > 1;
        return switch (element.getCardinality() == null ? "" : element.getCardinality()) {
            case "?" -> "[" + words + "]";
            case "*" -> "[" + words + "]...";
            case "+" -> (words.contains(" ") ? "(" + words + ")" : words) + "...";
            default -> several && element.eContainer() instanceof Group ? "(" + words + ")" : words;
        };
    }

    private String filled(Assignment assignment) {
        AbstractElement terminal = assignment.getTerminal();
        EStructuralFeature feature = owner.getEStructuralFeature(assignment.getFeature());
        return switch (terminal) {
            case CrossReference reference -> "<" + words(reference.getType().getClassifier().getName()) + ">";
            case RuleCall call when Expected.of(feature).isPresent() -> "<" + measured(Expected.of(feature).get()) + (call.getRule().getName().equals("Range") ? " range>" : ">");
            case RuleCall call -> called(call.getRule());
            default -> of(terminal);
        };
    }

    private static String measured(Expected expected) {
        if (expected.share()) {
            return "share";
        }
        return expected.dimensions().isEmpty() ? "figure" : expected.dimensions().stream().map(dimension -> dimension.word()).collect(Collectors.joining(" or "));
    }

    private String called(AbstractRule rule) {
        return switch (rule) {
            case EnumRule choice -> literals(choice);
            case ParserRule parser when parser.isFragment() -> of(parser.getAlternatives());
            case ParserRule parser when parser.getName().equals("QualifiedName") -> "<name>";
            case ParserRule parser when !(parser.getType().getClassifier() instanceof EClass) && !parser.getName().equals("Name") -> "(" + of(parser.getAlternatives()) + ")";
            case TerminalRule terminal -> switch (terminal.getName()) {
                case "STRING" -> "\"<text>\"";
                case "ID" -> "<name>";
                default -> "<" + words(terminal.getName()) + ">";
            };
            default -> "<" + words(rule.getName()) + ">";
        };
    }

    private static String literals(EnumRule rule) {
        AbstractElement all = rule.getAlternatives();
        List<AbstractElement> each = all instanceof Alternatives alternatives ? alternatives.getElements() : List.of(all);
        return "(" + each.stream().map(EnumLiteralDeclaration.class::cast).map(one -> one.getLiteral().getValue()).collect(Collectors.joining(" | ")) + ")";
    }

    /** {@code GelTable} is gel table. */
    static String words(String name) {
        return name.equals(name.toUpperCase()) ? name.toLowerCase() : name.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase();
    }
}
