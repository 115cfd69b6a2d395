package mouldwright.language.ide;

import com.google.inject.Inject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import mouldwright.language.PlugDocumentation;
import mouldwright.language.Trade;
import mouldwright.model.PlugPackage.Literals;
import mouldwright.plan.read.Expected;
import mouldwright.units.Units;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.naming.QualifiedName;
import org.eclipse.xtext.resource.IEObjectDescription;
import org.eclipse.xtext.scoping.IScopeProvider;

/** What may be written at a place: names that are declared, units that fit the dimension, values of the trade, words of the language, whole blocks. */
public final class Completions {

    @Inject
    private Cursor cursor;
    @Inject
    private IScopeProvider scopes;
    @Inject
    private PlugDocumentation documentation;
    @Inject
    private Templates templates;
    @Inject
    private Values values;

    /**
     * What may be written.
     *
     * @param start     where the word begins that is replaced; it ends at the place asked about
     * @param proposals in the order of their kinds
     */
    public record Offer(int start, List<Proposal> proposals) { }

    /** What may be written at an offset; nothing inside comments and texts. */
    public Offer at(SpecView view, int offset) {
        Optional<Cursor.At> found = cursor.at(view, offset);
        if (found.isEmpty()) {
            return new Offer(offset, List.of());
        }
        Cursor.At at = found.get();
        Map<String, Proposal> all = new LinkedHashMap<>();
        for (Expectation expected : at.expected()) {
            for (Proposal proposal : proposals(view, at, expected)) {
                all.putIfAbsent(proposal.kind() + " " + proposal.label(), proposal);
            }
        }
        String typed = at.typed().toLowerCase(Locale.ROOT);
        List<Proposal> fitting = new ArrayList<>(all.values().stream().filter(proposal -> fits(proposal, typed)).toList());
        fitting.sort(java.util.Comparator.comparing(Proposal::kind));
        return new Offer(at.start(), List.copyOf(fitting));
    }

    private static boolean fits(Proposal proposal, String typed) {
        String label = proposal.label().toLowerCase(Locale.ROOT);
        return label.startsWith(typed) || label.contains("." + typed) && !typed.isEmpty();
    }

    private List<Proposal> proposals(SpecView view, Cursor.At at, Expectation expected) {
        Optional<EReference> reference = expected.reference();
        if (reference.isPresent()) {
            return names(at, reference.get());
        }
        if (expected.isName()) {
            return expected.features().contains(Literals.USE__LIBRARY)
                    ? view.libraries().get().stream().map(name -> Proposal.plain(Proposal.Kind.NAME, name, "library", "")).toList() : List.of();
        }
        if (expected.isKeyword()) {
            List<Proposal> words = new ArrayList<>();
            String about = about(expected);
            words.add(Proposal.plain(Proposal.Kind.KEYWORD, expected.word(), detail(expected), about));
            templates.of(expected, at, scopes).ifPresent(words::add);
            return words;
        }
        return switch (expected.kind()) {
            case "UNIT" -> isOnLine(view, at) ? units(expected) : List.of();
            case "NUMBER", "ID", "STRING" -> values.of(view, expected, at);
            default -> List.of();
        };
    }

    private List<Proposal> names(Cursor.At at, EReference reference) {
        List<Proposal> names = new ArrayList<>();
        if (at.context().isPresent()) {
            for (IEObjectDescription known : scopes.getScope(at.context().get(), reference).getAllElements()) {
                QualifiedName name = known.getName();
                EObject object = known.getEObjectOrProxy();
                String label = object.eGet(Literals.NAMED__LABEL) instanceof String text ? text : "";
                names.add(Proposal.plain(Proposal.Kind.NAME, name.toString(), Trade.kind(object.eClass()) + (label.isEmpty() ? "" : ": " + label),
                        documentation.getDocumentation(object)));
            }
        }
        return names;
    }

    /** A unit may stand on the next line, but nobody puts it there. */
    private static boolean isOnLine(SpecView view, Cursor.At at) {
        return at.last().filter(word -> view.text().substring(word.end(), at.start()).indexOf('\n') < 0).isPresent();
    }

    private static List<Proposal> units(Expectation expected) {
        return expected.amount().flatMap(Expected::of).stream().flatMap(amount -> amount.dimensions().stream())
                .flatMap(dimension -> Units.unitsOf(dimension).stream().map(unit -> Proposal.plain(Proposal.Kind.UNIT, unit, dimension.word(), ""))).toList();
    }

    private String about(Expectation expected) {
        return expected.meaning().map(meaning -> documentation.getDocumentation((EObject) meaning)).orElse("");
    }

    private static String detail(Expectation expected) {
        return expected.meaning().map(meaning -> switch (meaning) {
            case EClass made -> Trade.kind(made);
            case EStructuralFeature feature -> Expected.of(feature).filter(amount -> !amount.dimensions().isEmpty())
                    .map(amount -> amount.dimensions().getFirst().word()).orElse(Trade.property(feature));
            default -> "";
        }).orElse("");
    }
}
