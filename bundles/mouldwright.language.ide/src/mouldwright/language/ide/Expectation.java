package mouldwright.language.ide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.language.ide.GrammarMachine.Frame;
import mouldwright.plan.read.Expected;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Group;
import org.eclipse.xtext.ParserRule;

/**
 * A word that may stand at a place.
 *
 * @param kind    as {@link mouldwright.language.parser.Word#kind()} has it
 * @param element of the grammar
 * @param within  the rules it stands in
 */
record Expectation(String kind, AbstractElement element, Frame within) {

    /** Whether it is a word of the language spelt in letters. */
    boolean isKeyword() {
        return kind.startsWith("'") && Character.isLetter(kind.charAt(1));
    }

    /** A keyword's spelling. */
    String word() {
        return kind.substring(1, kind.length() - 1);
    }

    /** The rule its element belongs to. */
    String rule() {
        return GrammarUtil.containingRule(element).getName();
    }

    /** Whether it stands for a name, whatever it is spelt like. */
    boolean isName() {
        return rule().equals("Name") || rule().equals("QualifiedName");
    }

    /** The properties it is for, innermost first. */
    List<EStructuralFeature> features() {
        List<EStructuralFeature> features = new ArrayList<>();
        feature(element).ifPresent(features::add);
        for (Frame frame = within; frame != null; frame = frame.outer()) {
            feature(frame.call().element()).ifPresent(features::add);
        }
        return features;
    }

    /** The property it is an amount of, past the number, the unit and the range. */
    Optional<EStructuralFeature> amount() {
        return features().stream().filter(feature -> Expected.of(feature).isPresent()).findFirst();
    }

    /** What a name here refers to; none for a name that is given here. */
    Optional<EReference> reference() {
        AbstractElement at = element;
        Frame frame = within;
        while (true) {
            CrossReference reference = EcoreUtil2.getContainerOfType(at, CrossReference.class);
            if (reference != null) {
                return Optional.ofNullable(GrammarUtil.getReference(reference));
            }
            if (frame == null || !(isDatatype(at))) {
                return Optional.empty();
            }
            at = frame.call().element();
            frame = frame.outer();
        }
    }

    private static boolean isDatatype(AbstractElement element) {
        return GrammarUtil.containingRule(element) instanceof ParserRule rule && GrammarUtil.isDatatypeRule(rule);
    }

    /** What a keyword begins: the kind of thing its rule makes, where it is the rule's first word, or the property that follows it. */
    Optional<Object> meaning() {
        Optional<EStructuralFeature> own = feature(element);
        if (own.isPresent()) {
            return Optional.of(own.get());
        }
        AbstractElement at = element;
        while (at.eContainer() instanceof AbstractElement outer) {
            if (outer instanceof Group group) {
                int index = group.getElements().indexOf(at);
                if (index == 0 && group.eContainer() instanceof ParserRule rule && rule.getType().getClassifier() instanceof EClass made) {
                    return Optional.of(made);
                }
                for (AbstractElement next : group.getElements().subList(index + 1, group.getElements().size())) {
                    Optional<Assignment> assigned = EcoreUtil2.eAllOfType(next, Assignment.class).stream().findFirst();
                    if (assigned.isPresent()) {
                        return feature(assigned.get()).map(Object.class::cast);
                    }
                }
            }
            at = outer;
        }
        return Optional.empty();
    }

    private static Optional<EStructuralFeature> feature(AbstractElement element) {
        Assignment assignment = EcoreUtil2.getContainerOfType(element, Assignment.class);
        if (assignment == null || !(GrammarUtil.containingRule(assignment) instanceof ParserRule rule) || !(rule.getType().getClassifier() instanceof EClass made)) {
            return Optional.empty();
        }
        return Optional.ofNullable(made.getEStructuralFeature(assignment.getFeature()));
    }
}
