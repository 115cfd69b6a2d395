package mouldwright.language.ide;

import com.google.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.language.PlugDocumentation;
import mouldwright.language.ide.GrammarMachine.Frame;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.ParserRule;

/** What comes next inside a section form, a row of stations and other lines of several figures. */
public final class FormHelp {

    /** How such a line is written, with the property each gap is for. */
    private static final Map<String, Shape> SHAPES = Map.of(
            "Superellipse", new Shape("superellipse {halfBreadth} by {height} exponent {exponent} above {above}"),
            "Tabled", new Shape("table {file} column {column}"),
            "Drawn", new Shape("drawing {file} layer {layer}"),
            "Like", new Shape("like {station} scaled {scaleY} by {scaleZ} about {aboutY} {aboutZ} raised {raised}"),
            "PointForm", new Shape("point {y} {z}"),
            "StationRow", new Shape("stations {first} to {last} from {from} every {every} lofted"),
            "Backbone", new Shape("backbone {width} by {depth} above {above}"),
            "Strongback", new Shape("strongback {width} by {depth} apart {apart}"),
            "GelRow", new Shape("{temperature} {catalyst} {time}"));

    @Inject
    private Cursor cursor;
    @Inject
    private PlugDocumentation documentation;

    /** A line with gaps. */
    private record Shape(String text) {
        List<String> gaps() {
            return java.util.regex.Pattern.compile("\\{(\\w+)}").matcher(text).results().map(match -> match.group(1)).toList();
        }
    }

    /**
     * Help for a line.
     *
     * @param line   as it is written, with the gaps by name
     * @param about  what it draws
     * @param gaps   in their order
     * @param active the gap to be filled next
     */
    public record Help(String line, String about, List<Gap> gaps, int active) { }

    /** A gap. @param from where it stands in the line @param to where it ends there */
    public record Gap(String name, int from, int to, String about) { }

    /** Help at a place; empty where no such line is being written. */
    public Optional<Help> at(SpecView view, int offset) {
        Optional<Cursor.At> at = cursor.at(view, offset);
        if (at.isEmpty()) {
            return Optional.empty();
        }
        for (Expectation expected : at.get().expected()) {
            Optional<Help> help = help(expected);
            if (help.isPresent()) {
                return help;
            }
        }
        return Optional.empty();
    }

    private Optional<Help> help(Expectation expected) {
        ParserRule rule = GrammarUtil.containingRule(expected.element()) instanceof ParserRule own ? own : null;
        List<EStructuralFeature> features = expected.features();
        Frame frame = expected.within();
        while (rule != null) {
            if (SHAPES.containsKey(rule.getName())) {
                Optional<String> next = next(expected, rule, features);
                if (next.isPresent()) {
                    return Optional.of(help(rule, next.get()));
                }
            }
            rule = frame != null && GrammarUtil.containingRule(frame.call().element()) instanceof ParserRule outer ? outer : null;
            frame = frame == null ? null : frame.outer();
        }
        return Optional.empty();
    }

    /** The gap that is filled next: the one the word is for, or the one that follows a connecting word. */
    private static Optional<String> next(Expectation expected, ParserRule rule, List<EStructuralFeature> features) {
        EClass made = (EClass) rule.getType().getClassifier();
        List<String> gaps = SHAPES.get(rule.getName()).gaps();
        Optional<String> own = features.stream().filter(feature -> feature.getEContainingClass().isSuperTypeOf(made)).map(EStructuralFeature::getName)
                .filter(gaps::contains).findFirst();
        if (own.isPresent() || !expected.rule().equals(rule.getName())) {
            return own;
        }
        return expected.meaning().filter(EStructuralFeature.class::isInstance).map(feature -> ((EStructuralFeature) feature).getName()).filter(gaps::contains);
    }

    private Help help(ParserRule rule, String next) {
        EClass made = (EClass) rule.getType().getClassifier();
        Shape shape = SHAPES.get(rule.getName());
        StringBuilder line = new StringBuilder();
        List<Gap> gaps = new java.util.ArrayList<>();
        int active = 0;
        int from = 0;
        for (String gap : shape.gaps()) {
            int at = shape.text().indexOf("{" + gap + "}", from);
            line.append(shape.text(), from, at);
            from = at + gap.length() + 2;
            String words = mouldwright.language.Trade.property(made.getEStructuralFeature(gap));
            active = gap.equals(next) ? gaps.size() : active;
            gaps.add(new Gap(words, line.length(), line.length() + words.length(), documentation.getDocumentation(made.getEStructuralFeature(gap))));
            line.append(words);
        }
        return new Help(line + shape.text().substring(from), documentation.getDocumentation(made), gaps, active);
    }
}
