package mouldwright.language.ide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import mouldwright.language.PlugDocumentation;
import mouldwright.model.PlugPackage;
import mouldwright.plan.read.Expected;
import mouldwright.plan.spec.Origin;
import mouldwright.units.Dimension;
import mouldwright.units.Units;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.ENamedElement;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.Alternatives;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.CompoundElement;
import org.eclipse.xtext.Grammar;
import org.eclipse.xtext.Group;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.ParserRule;
import org.eclipse.xtext.RuleCall;

/** The reference of the language, made of the grammar, the documentation of the model and the stated defaults. */
final class LanguageReference {

    /** Rules that are told of in words at the beginning, or are part of another rule's line. */
    private static final Set<String> TOLD = Set.of("Amount", "SignedMeasure", "Measure", "Bracket", "Sum", "Product", "Factor", "LetReference", "Call", "Negative", "Range",
            "QualifiedName", "Name");

    /** The first rule of each chapter; a chapter goes on to the next. */
    private static final Map<String, String> CHAPTERS = chapters();

    private final Grammar grammar;
    private final PlugDocumentation documentation;
    private final StringBuilder out = new StringBuilder();

    LanguageReference(Grammar grammar, PlugDocumentation documentation) {
        this.grammar = grammar;
        this.documentation = documentation;
    }

    private static Map<String, String> chapters() {
        Map<String, String> chapters = new LinkedHashMap<>();
        chapters.put("Document", "The file");
        chapters.put("Pack", "Materials and rates");
        chapters.put("Schedule", "Laminates");
        chapters.put("Plug", "The plug");
        chapters.put("Frame", "How it is built");
        chapters.put("Survey", "What was built");
        return chapters;
    }

    String text() {
        out.append("""
                # The language

                A spec is plain text in UTF-8, in a file whose name ends in `.plug`. Space and line ends do not matter. `//` and `/* */` are comments;
                a comment right before a declaration is its documentation and is shown wherever the name is used. The blocks may come in any
                order, except stations, points, plies and coats, whose order is that of the body, the outline and the work.

                What is written below in angle brackets is filled in, what stands in square brackets may be left out, a bar parts
                choices, and three dots say that it may be written again.

                ## Figures

                A figure is a number and its unit: `9 mm`, `3/8`-inch plywood is `(3/8) in`, `4 ft`, `36 kg/m3`, `20 degC`. A bare length takes the `units` of the plug,
                millimetres if none are stated. A decimal comma is read as a point. A formula stands in parentheses: `(2 * 450 + 30)`, and may
                use names of `let`, `+ - * /` and the functions `min` and `max`. A range states what is likely and how far it may be off:
                `0.33 from 0.30 to 0.36`. A share is a part of a whole, `33 %` or `0.33`.

                """);
        units();
        for (AbstractRule rule : grammar.getRules()) {
            if (CHAPTERS.containsKey(rule.getName())) {
                out.append("## ").append(CHAPTERS.get(rule.getName())).append("\n\n");
            }
            if (rule instanceof ParserRule parser && !parser.isFragment() && !TOLD.contains(parser.getName()) && parser.getType().getClassifier() instanceof EClass made) {
                rule(parser, made);
            }
        }
        return out.toString().stripTrailing() + "\n";
    }

    private void units() {
        Set<Dimension> measured = new LinkedHashSet<>();
        PlugPackage.eINSTANCE.eAllContents().forEachRemaining(element -> {
            if (element instanceof EStructuralFeature feature) {
                Expected.of(feature).ifPresent(expected -> measured.addAll(expected.dimensions()));
            }
        });
        out.append("| measures | units |\n|---|---|\n");
        for (Dimension dimension : measured) {
            String units = Units.unitsOf(dimension).stream().map(unit -> "`" + unit + "`").collect(Collectors.joining(" "));
            if (!units.isEmpty()) {
                out.append("| ").append(dimension.word()).append(" | ").append(units).append(" |\n");
            }
        }
        out.append('\n');
    }

    private void rule(ParserRule rule, EClass made) {
        out.append("### ").append(title(rule)).append("\n\n").append(documentation(made)).append("\n\n");
        List<AbstractElement> body = body(rule.getAlternatives());
        SyntaxWords syntax = new SyntaxWords(made);
        out.append("```\n");
        if (body.isEmpty()) {
            out.append(syntax.of(rule.getAlternatives())).append('\n');
        } else {
            out.append(head(rule.getAlternatives(), syntax)).append('\n');
            body.forEach(line -> out.append("    ").append(syntax.of(line)).append('\n'));
            out.append("}\n");
        }
        out.append("```\n\n");
        properties(rule, made);
    }

    private static String title(ParserRule rule) {
        String words = SyntaxWords.words(rule.getName());
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** What stands between the braces of a rule, one line each; empty where it has none. */
    private static List<AbstractElement> body(AbstractElement element) {
        if (!(element instanceof Group group)) {
            return List.of();
        }
        List<AbstractElement> parts = group.getElements();
        int open = opening(parts);
        return open < 0 || open + 1 >= parts.size() || !(parts.get(open + 1) instanceof Alternatives lines) ? List.of() : lines(lines);
    }

    private static List<AbstractElement> lines(Alternatives alternatives) {
        List<AbstractElement> lines = new ArrayList<>();
        for (AbstractElement line : alternatives.getElements()) {
            if (line instanceof RuleCall call && call.getRule() instanceof ParserRule rule && rule.isFragment() && rule.getAlternatives() instanceof Alternatives more) {
                lines.addAll(lines(more));
            } else {
                lines.add(line);
            }
        }
        return lines;
    }

    private static int opening(List<AbstractElement> parts) {
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i) instanceof Keyword keyword && keyword.getValue().equals("{")) {
                return i;
            }
        }
        return -1;
    }

    private static String head(AbstractElement element, SyntaxWords syntax) {
        List<AbstractElement> parts = ((Group) element).getElements();
        return parts.subList(0, opening(parts) + 1).stream().map(syntax::of).filter(words -> !words.isEmpty()).collect(Collectors.joining(" "));
    }

    private void properties(ParserRule rule, EClass made) {
        List<EStructuralFeature> features = features(rule.getAlternatives(), made);
        if (features.isEmpty()) {
            return;
        }
        out.append("| property | meaning | left out |\n|---|---|---|\n");
        for (EStructuralFeature feature : features) {
            out.append("| ").append(SyntaxWords.words(feature.getName())).append(" | ").append(documentation(feature)).append(expected(feature)).append(" | ")
                    .append(StatedDefaults.of(feature).map(given -> Figures.words(given) + (given.origin() instanceof Origin.Assumed(String why) ? ": " + why : "")).orElse("")).append(" |\n");
        }
        out.append('\n');
    }

    private static String expected(EStructuralFeature feature) {
        return Expected.of(feature).flatMap(expected -> expected.usual().map(usual -> " Usual: " + Figures.words(usual.least(), expected.dimensions().getFirst()) + " to "
                + Figures.words(usual.most(), expected.dimensions().getFirst()) + ".")).orElse("");
    }

    /** The properties a rule sets, in the order they are written. */
    private static List<EStructuralFeature> features(AbstractElement element, EClass made) {
        Set<EStructuralFeature> features = new LinkedHashSet<>();
        collect(element, made, features);
        return List.copyOf(features);
    }

    private static void collect(AbstractElement element, EClass made, Set<EStructuralFeature> features) {
        switch (element) {
            case Assignment assignment -> features.add(made.getEStructuralFeature(assignment.getFeature()));
            case CompoundElement compound -> compound.getElements().forEach(part -> collect(part, made, features));
            case RuleCall call when call.getRule() instanceof ParserRule rule && rule.isFragment() -> collect(rule.getAlternatives(), made, features);
            default -> { }
        }
    }

    private String documentation(ENamedElement element) {
        String words = documentation.getDocumentation(element);
        if (words.isBlank()) {
            throw new IllegalStateException("the model does not say what this is: " + element);
        }
        return words.strip().replaceAll("\\s+", " ").replace("|", "\\|");
    }
}
