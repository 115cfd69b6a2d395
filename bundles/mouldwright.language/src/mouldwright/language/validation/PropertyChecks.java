package mouldwright.language.validation;

import com.google.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import mouldwright.language.Trade;
import mouldwright.language.services.PlugGrammarAccess;
import mouldwright.model.PlugPackage;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.ParserRule;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.validation.Check;

/** A property is given once: a second one would silently replace the first. */
public class PropertyChecks extends Concern {

	static final String TWICE = "MW909";

	/** What a text can give more than once, by what it is given to; found once, since texts have thousands of parts of which this cannot be said. */
	private final Map<EClass, List<EStructuralFeature>> repeatable = new ConcurrentHashMap<>();

	@Inject
	private PlugGrammarAccess grammar;

	@Check
	public void givenOnce(EObject owner) {
		List<EStructuralFeature> features = repeatable.computeIfAbsent(owner.eClass(), this::repeatable);
		if (features.isEmpty() || NodeModelUtils.findActualNodeFor(owner) == null)
			return;
		for (EStructuralFeature feature : features) {
			List<INode> nodes = NodeModelUtils.findNodesForFeature(owner, feature);
			if (nodes.size() < 2)
				continue;
			INode second = nodes.get(1);
			String what = feature instanceof EReference ? words(feature) : NodeModelUtils.getTokenText(second);
			getMessageAcceptor().acceptError("`" + what + "` is given twice; the first is in line " + nodes.get(0).getStartLine(), owner, second.getOffset(), second.getLength(), TWICE);
		}
	}

	/** Single features that the grammar sets where it goes round, or at more than one place of a rule. */
	private List<EStructuralFeature> repeatable(EClass type) {
		List<EStructuralFeature> result = new ArrayList<>();
		for (EStructuralFeature feature : type.getEAllStructuralFeatures())
			if (!feature.isMany() && !feature.isDerived() && feature != PlugPackage.Literals.BINARY__OPERATOR && isRepeatable(type, feature))
				result.add(feature);
		return result;
	}

	private boolean isRepeatable(EClass type, EStructuralFeature feature) {
		for (ParserRule rule : GrammarUtil.allParserRules(grammar.getGrammar())) {
			List<Assignment> assignments = GrammarUtil.containedAssignments(rule).stream().filter(assignment -> assignment.getFeature().equals(feature.getName())).toList();
			if (rule.getType().getClassifier() instanceof EClass read && (read.isSuperTypeOf(type) || type.isSuperTypeOf(read))
					&& (assignments.size() > 1 || assignments.stream().anyMatch(PropertyChecks::goesRound)))
				return true;
		}
		return false;
	}

	private static boolean goesRound(EObject part) {
		for (EObject element = part; element instanceof AbstractElement one; element = element.eContainer())
			if (GrammarUtil.isMultipleCardinality(one))
				return true;
		return false;
	}

	private static String words(EStructuralFeature feature) {
		return Trade.property(feature);
	}
}
