package mouldwright.language.formatting;

import com.google.inject.Inject;
import com.google.inject.Singleton;
import java.util.HashSet;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.Alternatives;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.Group;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.IGrammarAccess;
import org.eclipse.xtext.ParserRule;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.formatting2.regionaccess.IEObjectRegion;
import org.eclipse.xtext.formatting2.regionaccess.ISemanticRegion;

/**
 * Which words begin an item of a block (a property, a point, a station), read off the grammar: the first element of each alternative of a
 * repeated group that stands between braces or makes up the whole file.
 */
@Singleton
public final class ItemStarts {

	private final Set<EObject> starts = new HashSet<>();

	@Inject
	ItemStarts(IGrammarAccess access) {
		for (ParserRule rule : GrammarUtil.allParserRules(access.getGrammar()))
			if (!GrammarUtil.isDatatypeRule(rule))
				collect(rule.getAlternatives(), access.getGrammar().getRules().get(0) == rule);
	}

	private void collect(AbstractElement element, boolean whole) {
		if (!(element instanceof Group group)) {
			if (element instanceof Alternatives alternatives)
				alternatives.getElements().forEach(e -> collect(e, whole));
			return;
		}
		boolean inBraces = whole;
		for (AbstractElement part : group.getElements()) {
			if (inBraces && GrammarUtil.isMultipleCardinality(part)) {
				first(part);
				inBraces = whole;
			} else if (opens(part)) {
				inBraces = true;
			} else {
				collect(part, whole);
			}
		}
	}

	private static boolean opens(AbstractElement part) {
		AbstractElement word = part instanceof Assignment assignment ? assignment.getTerminal() : part;
		return word instanceof org.eclipse.xtext.Keyword keyword && keyword.getValue().equals("{");
	}

	private void first(AbstractElement element) {
		switch (element) {
			case Alternatives alternatives -> alternatives.getElements().forEach(this::first);
			case Group group -> first(group.getElements().get(0));
			case Assignment assignment -> first(assignment.getTerminal());
			case RuleCall call -> rule(call);
			default -> starts.add(element);
		}
	}

	private void rule(RuleCall call) {
		AbstractRule rule = call.getRule();
		if (!starts.add(call) || !(rule instanceof ParserRule parser))
			return;
		if (parser.isFragment() || parser.getAlternatives() instanceof Alternatives)
			first(parser.getAlternatives());
	}

	/** Whether an item begins with a word. */
	public boolean contains(ISemanticRegion word) {
		EObject element = word.getGrammarElement();
		if (starts.contains(element))
			return true;
		IEObjectRegion region = word.getEObjectRegion();
		while (region != null && region.getPreviousHiddenRegion() != null && region.getPreviousHiddenRegion().getNextSemanticRegion() == word) {
			if (starts.contains(region.getGrammarElement()))
				return true;
			region = region.getContainingRegion();
		}
		return false;
	}
}
