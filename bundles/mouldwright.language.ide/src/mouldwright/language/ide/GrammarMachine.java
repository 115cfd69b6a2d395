package mouldwright.language.ide;

import com.google.inject.Inject;
import com.google.inject.Singleton;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.Alternatives;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.EnumLiteralDeclaration;
import org.eclipse.xtext.EnumRule;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Group;
import org.eclipse.xtext.IGrammarAccess;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.TerminalRule;

/**
 * The grammar as a machine that reads kinds of words and says what may come next: every rule a small network, a call of a rule a frame on a
 * stack. All readings of an ambiguous beginning are followed side by side.
 */
@Singleton
final class GrammarMachine {

    /** A place in a rule. */
    static final class Node {
        private final List<Node> free = new ArrayList<>();
        private final List<Step> steps = new ArrayList<>();
        private final List<Call> calls = new ArrayList<>();
        private boolean end;
    }

    /** A word that leads on.
     *  @param kind as {@link mouldwright.language.parser.Word#kind()} has it */
    record Step(String kind, AbstractElement element, Node to) { }

    /** A rule that is gone through on the way. */
    record Call(RuleCall element, AbstractRule rule, Node to) { }

    /** Where to go on after a rule; the outermost has none. */
    record Frame(Call call, Frame outer) { }

    /** Somewhere in a reading. */
    record Place(Node node, Frame frame) { }

    private final Map<AbstractRule, Node> entries = new HashMap<>();
    private final AbstractRule start;

    @Inject
    GrammarMachine(IGrammarAccess access) {
        start = access.getGrammar().getRules().getFirst();
    }

    /** Before the first word of a file. */
    Set<Place> start() {
        return Set.of(new Place(entry(start), null));
    }

    /** After one more word; empty if it cannot stand there. */
    Set<Place> after(Set<Place> places, String kind) {
        Set<Place> next = new LinkedHashSet<>();
        steps(places, (step, frame) -> {
            if (step.kind().equals(kind)) {
                next.add(new Place(step.to(), frame));
            }
        });
        return next;
    }

    /** All words that may come next, each with the rules it stands in. */
    void steps(Set<Place> places, BiConsumer<Step, Frame> each) {
        Set<Place> seen = new HashSet<>();
        places.forEach(place -> steps(place, seen, each));
    }

    private void steps(Place place, Set<Place> seen, BiConsumer<Step, Frame> each) {
        if (!seen.add(place)) {
            return;
        }
        place.node().steps.forEach(step -> each.accept(step, place.frame()));
        place.node().free.forEach(node -> steps(new Place(node, place.frame()), seen, each));
        place.node().calls.forEach(call -> steps(new Place(entry(call.rule()), new Frame(call, place.frame())), seen, each));
        if (place.node().end && place.frame() != null) {
            steps(new Place(place.frame().call().to(), place.frame().outer()), seen, each);
        }
    }

    private Node entry(AbstractRule rule) {
        Node known = entries.get(rule);
        if (known != null) {
            return known;
        }
        Node entry = new Node();
        entries.put(rule, entry);
        build(rule.getAlternatives(), entry).end = true;
        return entry;
    }

    private Node build(AbstractElement element, Node from) {
        Node in = new Node();
        from.free.add(in);
        Node out = once(element, in);
        Node exit = new Node();
        out.free.add(exit);
        if (GrammarUtil.isOptionalCardinality(element)) {
            from.free.add(exit);
        }
        if (GrammarUtil.isMultipleCardinality(element)) {
            out.free.add(in);
        }
        return exit;
    }

    private Node once(AbstractElement element, Node from) {
        return switch (element) {
            case Keyword keyword -> step(quoted(keyword), keyword, from);
            case RuleCall call -> call(call, from);
            case Assignment assignment -> build(assignment.getTerminal(), from);
            case CrossReference reference -> build(reference.getTerminal(), from);
            case Alternatives alternatives -> {
                Node out = new Node();
                alternatives.getElements().forEach(one -> build(one, from).free.add(out));
                yield out;
            }
            case Group group -> {
                Node at = from;
                for (AbstractElement one : group.getElements()) {
                    at = build(one, at);
                }
                yield at;
            }
            default -> from;
        };
    }

    private static Node call(RuleCall call, Node from) {
        if (call.getRule() instanceof TerminalRule terminal) {
            return step(terminal.getName(), call, from);
        }
        Node out = new Node();
        if (call.getRule() instanceof EnumRule values) {
            values.eAllContents().forEachRemaining(part -> {
                if (part instanceof EnumLiteralDeclaration literal) {
                    from.steps.add(new Step(quoted(literal.getLiteral()), call, out));
                }
            });
        } else {
            from.calls.add(new Call(call, call.getRule(), out));
        }
        return out;
    }

    private static Node step(String kind, AbstractElement element, Node from) {
        Node to = new Node();
        from.steps.add(new Step(kind, element, to));
        return to;
    }

    private static String quoted(Keyword keyword) {
        return "'" + keyword.getValue() + "'";
    }
}
