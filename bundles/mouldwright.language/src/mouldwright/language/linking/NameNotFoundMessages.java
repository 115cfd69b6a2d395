package mouldwright.language.linking;

import com.google.inject.Inject;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import mouldwright.language.Trade;
import mouldwright.units.SpellingDistance;
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

	@Override
	public DiagnosticMessage getUnresolvedProxyMessage(ILinkingDiagnosticContext context) {
		String name = context.getLinkText();
		String kind = Trade.kind(context.getReference().getEReferenceType());
		List<String> known = new java.util.ArrayList<>();
		scopes.getScope(context.getContext(), context.getReference()).getAllElements().forEach(d -> known.add(d.getName().toString()));
		Optional<String> nearest = nearest(name, known);
		String message = "no " + kind + " is called `" + name + "`" + nearest.map(n -> "; `" + n + "`?").orElse(known.isEmpty() ? "; none is known here" : "");
		return new DiagnosticMessage(message, Severity.ERROR, CODE, nearest.map(n -> new String[] { "write `" + n + "`" }).orElseGet(() -> new String[0]));
	}

	private static Optional<String> nearest(String name, List<String> known) {
		double most = Math.max(1, name.length() / 2.5) * 2;
		return known.stream().filter(k -> SpellingDistance.between(name, k) <= most)
				.min(Comparator.<String>comparingInt(k -> SpellingDistance.between(name, k)).thenComparing(Comparator.naturalOrder()));
	}
}
