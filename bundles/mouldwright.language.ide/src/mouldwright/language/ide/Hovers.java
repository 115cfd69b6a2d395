package mouldwright.language.ide;

import com.google.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.language.PlugDocumentation;
import mouldwright.language.Trade;
import mouldwright.model.Measure;
import mouldwright.model.Named;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Quantity;
import mouldwright.plan.read.Expected;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.Unit;
import mouldwright.units.UnitSystem;
import mouldwright.units.Units;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.nodemodel.ILeafNode;

/** What is said of a word: what it means, what it measures, which figures came of it and how, and what is assumed where the spec is silent. */
public final class Hovers {

    @Inject
    private PlugDocumentation documentation;
    @Inject
    private Names names;

    /**
     * What is said.
     *
     * @param offset where the word begins
     * @param length of the word
     * @param words  in Markdown
     */
    public record Hover(int offset, int length, String words) { }

    /** About the word at a place; empty in space and where nothing is to be said. */
    public Optional<Hover> at(SpecView view, int offset) {
        return view.word(offset).flatMap(leaf -> SpecView.owner(leaf).map(owner -> new Hover(leaf.getOffset(), leaf.getLength(), words(view, leaf, owner))))
                .filter(hover -> !hover.words().isBlank());
    }

    private String words(SpecView view, ILeafNode leaf, EObject owner) {
        Optional<Named> named = names.at(view, leaf.getOffset());
        if (named.isPresent()) {
            return named(view, named.get());
        }
        if (owner instanceof Measure measure) {
            return measure(measure);
        }
        return leaf.getGrammarElement() instanceof Keyword keyword ? keyword(view, keyword, owner) : "";
    }

    private String named(SpecView view, Named named) {
        StringBuilder words = new StringBuilder("**").append(Trade.kind(named.eClass())).append(' ').append(named.getName()).append("**");
        if (named.getLabel() != null) {
            words.append(" ").append(named.getLabel());
        }
        words.append("\n\n").append(documentation.getDocumentation(named));
        return words.append(figures(view, named)).append(assumed(named)).toString();
    }

    private String keyword(SpecView view, Keyword keyword, EObject owner) {
        Optional<Object> meaning = new Expectation("'" + keyword.getValue() + "'", keyword, null).meaning();
        if (meaning.isEmpty()) {
            return "";
        }
        StringBuilder words = new StringBuilder("**").append(keyword.getValue()).append("**\n\n").append(documentation.getDocumentation((EObject) meaning.get()));
        if (meaning.get() instanceof EStructuralFeature feature) {
            Expected.of(feature).filter(expected -> !expected.dimensions().isEmpty())
                    .ifPresent(expected -> words.append("\n\nMeasures: ").append(expected.dimensions().getFirst().word()).append('.'));
            StatedDefaults.of(feature).ifPresent(given -> words.append("\n\nWithout it: ").append(silent(given)));
            Object value = feature.getEContainingClass().isInstance(owner) ? owner.eGet(feature) : null;
            if (value instanceof EObject block && StatedDefaults.of(feature).isEmpty()) {
                words.append(figures(view, block)).append(assumed(block));
            }
        } else {
            words.append(figures(view, owner)).append(assumed(owner));
        }
        return words.toString();
    }

    private static String figures(SpecView view, EObject part) {
        List<String> lines = new ArrayList<>();
        Optional<BuildPlan> plan = Figures.plan(view, part);
        for (Quantity quantity : Figures.of(view, part)) {
            String formula = Figures.formula(plan.orElseThrow(), quantity);
            lines.add("- " + quantity.label() + ": **" + Figures.range(quantity) + "** `" + quantity.id() + "`" + (formula.isEmpty() ? "" : "  \n  " + formula));
        }
        return lines.isEmpty() ? "" : "\n\n" + String.join("\n", lines);
    }

    /** The defaults that stand for what a block leaves out. */
    private static String assumed(EObject part) {
        List<String> lines = new ArrayList<>();
        for (EStructuralFeature feature : part.eClass().getEAllStructuralFeatures()) {
            if (!part.eIsSet(feature)) {
                StatedDefaults.of(feature).ifPresent(given -> lines.add("- " + Trade.property(feature) + ": " + silent(given)));
            }
        }
        return lines.isEmpty() ? "" : "\n\nAssumed, since not stated:\n" + String.join("\n", lines);
    }

    private static String silent(Given given) {
        return Figures.words(given) + (given.origin() instanceof Origin.Assumed(String reason) ? " (" + reason + ")" : "");
    }

    /** A number in the other units, and what is expected of it. */
    private static String measure(Measure measure) {
        Optional<Unit> unit = measure.getUnit() == null ? Optional.empty() : Units.find(measure.getUnit());
        StringBuilder words = new StringBuilder();
        if (unit.isPresent()) {
            Dimension dimension = unit.get().dimension();
            try {
                double si = unit.get().toSi(Double.parseDouble(measure.getNumber().replace(',', '.')) * (measure.isNegative() ? -1 : 1));
                words.append("**").append(measure.isNegative() ? "-" : "").append(measure.getNumber()).append(' ').append(measure.getUnit()).append("**, ").append(dimension.withArticle());
                String metric = Display.of(UnitSystem.METRIC).format(si, dimension);
                String us = Display.of(UnitSystem.US).format(si, dimension);
                words.append("\n\n").append(metric).append(us.equals(metric) ? "" : " = " + us);
            } catch (NumberFormatException | mouldwright.units.NotANumber e) {
                return "";
            }
        }
        Optional<EStructuralFeature> feature = Optional.ofNullable(property(measure));
        feature.flatMap(StatedDefaults::of).ifPresent(given -> words.append(words.isEmpty() ? "" : "\n\n").append("Without it: ").append(silent(given)));
        return words.toString();
    }

    private static EStructuralFeature property(EObject part) {
        for (EObject at = part; at != null && at.eContainmentFeature() != null; at = at.eContainer()) {
            if (Expected.of(at.eContainmentFeature()).isPresent()) {
                return at.eContainmentFeature();
            }
        }
        return null;
    }
}
