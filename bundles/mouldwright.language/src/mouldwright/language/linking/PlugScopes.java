package mouldwright.language.linking;

import com.google.inject.Inject;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mouldwright.model.AbstractStation;
import mouldwright.model.Declaration;
import mouldwright.model.Document;
import mouldwright.model.Let;
import mouldwright.model.Line;
import mouldwright.model.Named;
import mouldwright.model.Plug;
import mouldwright.model.PlugPackage;
import mouldwright.model.Station;
import mouldwright.model.StationRow;
import mouldwright.model.Survey;
import mouldwright.model.Use;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.naming.QualifiedName;
import org.eclipse.xtext.resource.EObjectDescription;
import org.eclipse.xtext.resource.IEObjectDescription;
import org.eclipse.xtext.scoping.IScope;
import org.eclipse.xtext.scoping.IScopeProvider;
import org.eclipse.xtext.scoping.impl.MapBasedScope;
import org.eclipse.xtext.util.IResourceScopeCache;

/**
 * What a name may mean at a place: stations, lines and named amounts of the plug it stands in (of the plug surveyed, in a survey); for
 * everything else the file's own declarations, then those of the libraries it uses, by their names or after the library's alias and a dot.
 */
public class PlugScopes implements IScopeProvider {

	@Inject
	private IResourceScopeCache cache;
	@Inject
	private Libraries libraries;

	@Override
	public IScope getScope(EObject context, EReference reference) {
		EClass type = reference.getEReferenceType();
		if (PlugPackage.Literals.DECLARATION.isSuperTypeOf(type))
			return declarations(context, type);
		Plug plug = plugOf(context);
		if (plug == null)
			return IScope.NULLSCOPE;
		return cache.get(List.of(plug, type), context.eResource(), () -> scope(named(plug, type)));
	}

	private static Plug plugOf(EObject context) {
		Survey survey = EcoreUtil2.getContainerOfType(context, Survey.class);
		return survey != null ? survey.getPlug() : EcoreUtil2.getContainerOfType(context, Plug.class);
	}

	private static Map<String, Named> named(Plug plug, EClass type) {
		Map<String, Named> result = new LinkedHashMap<>();
		if (type == PlugPackage.Literals.STATION)
			stations(plug).forEach(station -> put(result, station));
		else if (type == PlugPackage.Literals.LINE)
			for (Line line : plug.getLines())
				put(result, line);
		else if (type == PlugPackage.Literals.LET)
			for (Let let : plug.getLets())
				put(result, let);
		return result;
	}

	/** All stations of a plug, those of rows too, in the order written. */
	public static List<Station> stations(Plug plug) {
		List<Station> result = new ArrayList<>();
		for (AbstractStation station : plug.getStations())
			switch (station) {
				case Station single -> result.add(single);
				case StationRow row -> result.addAll(row.getStations());
				default -> throw new IllegalStateException("a station of an unknown kind: " + station.eClass().getName());
			}
		return result;
	}

	private IScope declarations(EObject context, EClass type) {
		if (!(EcoreUtil2.getRootContainer(context) instanceof Document document))
			return IScope.NULLSCOPE;
		return cache.get(List.of("declarations", type), context.eResource(), () -> {
			Map<String, Named> result = new LinkedHashMap<>();
			add(result, document, type, "");
			for (Use use : document.getUses())
				if (use.getLibrary() != null && libraries.find(document.eResource(), use.getLibrary()) instanceof Libraries.Found.Loaded(Document library)) {
					add(result, library, type, "");
					if (use.getAlias() != null)
						add(result, library, type, use.getAlias() + ".");
				}
			return scope(result);
		});
	}

	private static void add(Map<String, Named> result, Document document, EClass type, String prefix) {
		for (Declaration declaration : document.getDeclarations())
			if (type.isInstance(declaration) && declaration.getName() != null)
				result.putIfAbsent(prefix + declaration.getName(), declaration);
	}

	private static void put(Map<String, Named> result, Named named) {
		if (named.getName() != null)
			result.putIfAbsent(named.getName(), named);
	}

	private static IScope scope(Map<String, Named> named) {
		Collection<IEObjectDescription> descriptions = new ArrayList<>();
		named.forEach((name, object) -> descriptions.add(EObjectDescription.create(names(name), object)));
		return MapBasedScope.createScope(IScope.NULLSCOPE, descriptions);
	}

	private static QualifiedName names(String name) {
		return QualifiedName.create(name.split("\\."));
	}
}
