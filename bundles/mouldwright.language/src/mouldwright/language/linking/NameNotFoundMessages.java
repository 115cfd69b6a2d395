package mouldwright.language.linking;

import com.google.inject.Inject;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import mouldwright.language.Trade;
import mouldwright.units.SpellingDistance;
import mouldwright.model.Document;
import mouldwright.model.PlugPackage;
import mouldwright.model.Survey;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.IResourceScopeCache;
import org.eclipse.xtext.diagnostics.DiagnosticMessage;
import org.eclipse.xtext.diagnostics.Severity;
import org.eclipse.xtext.linking.impl.LinkingDiagnosticMessageProvider;
import org.eclipse.xtext.scoping.IScopeProvider;

/** Says which name is not known, of what kind it should be, and which known one is nearest. */
public class NameNotFoundMessages extends LinkingDiagnosticMessageProvider {

	/** Code of findings about names that mean nothing here. */
	public static final String CODE = "MW902";

	@Inject
	private IScopeProvider scopes;
	@Inject
	private Libraries libraries;
	@Inject
	private IResourceScopeCache cache;

	@Override
	public DiagnosticMessage getUnresolvedProxyMessage(ILinkingDiagnosticContext context) {
		String name = context.getLinkText();
		String kind = Trade.kind(context.getReference().getEReferenceType());
		List<String> known = new java.util.ArrayList<>();
		scopes.getScope(context.getContext(), context.getReference()).getAllElements().forEach(d -> known.add(d.getName().toString()));
		Optional<String> nearest = nearest(name, known);
		Resource resource = context.getContext().eResource();
		Survey survey = EcoreUtil2.getContainerOfType(context.getContext(), Survey.class);
		if (survey != null && context.getReference() != PlugPackage.Literals.SURVEY__PLUG && (survey.getPlug() == null || survey.getPlug().eIsProxy()))
			return null;
		if (isConsequence(resource, context.getReference().getEReferenceType(), nearest) || !isFirst(resource, kind + " " + name, context))
			return null;
		Optional<String> library = PlugPackage.Literals.DECLARATION.isSuperTypeOf(context.getReference().getEReferenceType())
				? libraries.declaring(resource, context.getReference().getEReferenceType().getName().toLowerCase(Locale.ROOT), name) : Optional.empty();
		if (library.isPresent())
			return new DiagnosticMessage("no " + kind + " is called `" + name + "` here; " + library.get() + " has it", Severity.ERROR, CODE, new String[] { "use `" + library.get() + "`" });
		String message = "no " + kind + " is called `" + name + "`" + nearest.map(n -> "; `" + n + "`?").orElse(other(resource, name).orElse(known.isEmpty() ? "; none is known here" : ""));
		return new DiagnosticMessage(message, Severity.ERROR, CODE, nearest.map(n -> new String[] { "write `" + n + "`" }).orElseGet(() -> new String[0]));
	}

	/** What has the name though it is of another kind, in this file or in a library it uses. */
	private Optional<String> other(Resource resource, String name) {
		if (!(resource.getContents().get(0) instanceof Document own))
			return Optional.empty();
		Stream<Document> used = own.getUses().stream().filter(use -> use.getLibrary() != null).map(use -> libraries.find(resource, use.getLibrary()))
				.filter(Libraries.Found.Loaded.class::isInstance).map(found -> ((Libraries.Found.Loaded) found).document());
		return Stream.concat(Stream.of(own), used).flatMap(document -> document.getDeclarations().stream()).filter(entry -> name.equals(entry.getName())).findFirst()
				.map(entry -> "; a " + Trade.kind(entry.eClass()) + " is");
	}

	/** Names go missing with a library that is not found, or with words that could not be read; those are said, not what follows from them. */
	private boolean isConsequence(Resource resource, EClass type, Optional<String> nearest) {
		boolean mended = resource instanceof XtextResource text && text.getParseResult() != null && text.getParseResult().hasSyntaxErrors();
		return nearest.isEmpty() && mended || PlugPackage.Literals.DECLARATION.isSuperTypeOf(type) && nearest.isEmpty() && lacksLibrary(resource);
	}

	private boolean lacksLibrary(Resource resource) {
		return resource.getContents().get(0) instanceof Document document && document.getUses().stream().anyMatch(
				use -> use.getLibrary() == null || libraries.find(resource, use.getLibrary()) instanceof Libraries.Found.Missing);
	}

	/** A name that means nothing is told at the first place it is used at. */
	private boolean isFirst(Resource resource, String what, ILinkingDiagnosticContext context) {
		String place = EcoreUtil.getURI(context.getContext()).fragment() + "/" + context.getReference().getName();
		return cache.get("not found: " + what, resource, () -> place).equals(place);
	}

	private static Optional<String> nearest(String name, List<String> known) {
		double most = Math.max(1, name.length() / 2.5) * 2;
		return known.stream().filter(k -> SpellingDistance.between(name, k) <= most)
				.min(Comparator.<String>comparingInt(k -> SpellingDistance.between(name, k)).thenComparing(Comparator.naturalOrder()));
	}
}
