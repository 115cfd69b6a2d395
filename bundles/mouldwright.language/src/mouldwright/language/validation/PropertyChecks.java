package mouldwright.language.validation;

import java.util.List;
import mouldwright.language.Trade;
import mouldwright.model.PlugPackage;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.validation.Check;

/** A property is given once: a second one would silently replace the first. */
public class PropertyChecks extends Concern {

	static final String TWICE = "MW909";

	@Check
	public void givenOnce(EObject owner) {
		ICompositeNode node = NodeModelUtils.findActualNodeFor(owner);
		if (node == null)
			return;
		for (EStructuralFeature feature : owner.eClass().getEAllStructuralFeatures()) {
			if (feature.isMany() || feature.isDerived() || feature == PlugPackage.Literals.BINARY__OPERATOR)
				continue;
			List<INode> nodes = NodeModelUtils.findNodesForFeature(owner, feature);
			if (nodes.size() < 2)
				continue;
			INode second = nodes.get(1);
			String what = feature instanceof EReference ? words(feature) : NodeModelUtils.getTokenText(second);
			getMessageAcceptor().acceptError("`" + what + "` is given twice; the first is in line " + nodes.get(0).getStartLine(), owner, second.getOffset(), second.getLength(), TWICE);
		}
	}

	private static String words(EStructuralFeature feature) {
		return Trade.property(feature);
	}
}
