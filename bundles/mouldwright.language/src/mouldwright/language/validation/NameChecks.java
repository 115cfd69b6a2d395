package mouldwright.language.validation;

import java.util.HashMap;
import java.util.Map;
import mouldwright.language.Trade;
import mouldwright.language.linking.PlugScopes;
import mouldwright.model.Declaration;
import mouldwright.model.Document;
import mouldwright.model.Named;
import mouldwright.model.Plug;
import mouldwright.model.PlugPackage;
import mouldwright.model.Station;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.validation.Check;

/** A name is given once among its kind. */
public class NameChecks extends Concern {

	static final String TAKEN = "MW910";

	@Check
	public void ofDeclarations(Document document) {
		Map<String, Named> seen = new HashMap<>();
		for (Declaration declaration : document.getDeclarations())
			if (declaration.eClass() != PlugPackage.Literals.SURVEY)
				once(declaration, seen, declaration.eClass());
	}

	@Check
	public void withinPlug(Plug plug) {
		Map<String, Named> seen = new HashMap<>();
		plug.getLets().forEach(let -> once(let, seen, let.eClass()));
		plug.getLines().forEach(line -> once(line, seen, line.eClass()));
		for (Station station : PlugScopes.stations(plug))
			once(station, seen, station.eClass());
	}

	private void once(Named named, Map<String, Named> seen, EClass kind) {
		if (named.getName() == null)
			return;
		Named first = seen.putIfAbsent(kind.getName() + " " + named.getName(), named);
		if (first == null)
			return;
		ICompositeNode node = NodeModelUtils.getNode(first);
		String where = node == null ? "a row of stations" : "line " + node.getStartLine();
		String message = "another " + Trade.kind(kind) + " is called `" + named.getName() + "`, in " + where;
		if (NodeModelUtils.getNode(named) == null)
			fault(message, named.eContainer(), PlugPackage.Literals.STATION_ROW__FIRST, TAKEN);
		else
			fault(message, named, PlugPackage.Literals.NAMED__NAME, TAKEN);
	}
}
