package mouldwright.report;

import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Quantity;
import mouldwright.plan.ledger.Derivation;
import mouldwright.plan.ledger.Ground;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.SpellingDistance;
import mouldwright.units.UnitSystem;

/**
 * How one quantity came about, as an indented tree: the formula in words and its source, then what it rests on, down to lines of the spec,
 * entries of libraries, defaults with their reason, and measures of the shape with the lines that draw it. A branch that two figures share is printed once.
 */
public final class Explanation {

    private static final int NEAREST = 5;
    private static final String STEP = "    ";
    private static final int PARTS_AT_MOST = 12;

    private final Display display;

    /** @param system family of units the figures are shown in */
    public Explanation(UnitSystem system) {
        this.display = Display.of(system);
    }

    /** The tree of a quantity, with the cautions of its stage; empty if the plan has no such quantity. */
    public Optional<String> print(BuildPlan plan, String id) {
        return plan.derivation(id).map(derivation -> {
            StringBuilder out = new StringBuilder();
            node(derivation, "", new Told(Collections.newSetFromMap(new IdentityHashMap<>()), new HashSet<>()), out);
            String stage = plan.quantity(id).map(Quantity::stage).orElse("shape");
            List<Caution> cautions = Caution.of(stage);
            if (!cautions.isEmpty()) {
                out.append('\n');
                cautions.forEach(caution -> Paragraph.print("! ", "  ", caution.words(), out));
                Paragraph.print("! ", "  ", Caution.DEFERENCE, out);
            }
            return out.toString();
        });
    }

    /** The ids of a plan most like a word that is none, nearest first; those that begin like it count as near. */
    public static List<String> nearest(BuildPlan plan, String id) {
        Comparator<String> order = Comparator.<String>comparingInt(known -> SpellingDistance.between(id, known)).thenComparing(known -> known);
        return plan.quantities().stream().map(Quantity::id)
                .filter(known -> known.startsWith(id) || SpellingDistance.between(id, known) <= Math.max(4, id.length()))
                .sorted(order).limit(NEAREST).toList();
    }

    /** What a tree has told already.
     *  @param nodes   the same figures
     *  @param grounds equal grounds of measures */
    private record Told(Set<Derivation> nodes, Set<Ground> grounds) { }

    private void node(Derivation derivation, String indent, Told told, StringBuilder out) {
        String inner = indent + STEP;
        boolean shared = !told.nodes().add(derivation);
        switch (derivation) {
            case Derivation.Reckoned r -> {
                head(indent, r.label(), words(r.value(), r.dimension()), range(r.low(), r.value(), r.high(), r.dimension()), r.id(), out);
                if (shared) {
                    if (!r.inputs().isEmpty()) {
                        out.append(inner).append("as above\n");
                    }
                    return;
                }
                Paragraph.print(inner + "= ", inner + "  ", r.formula() + "   [" + r.source() + "]", out);
                if (r.low() < r.high()) {
                    Paragraph.print(inner, inner + "  ", r.bounds(), out);
                }
                r.inputs().forEach(input -> node(input, inner, told, out));
            }
            case Derivation.Measured m -> {
                head(indent, m.label(), words(m.value(), m.dimension()), "", m.id(), out);
                String error = m.measurement().error() > 0 ? ", within " + words(m.measurement().error(), m.dimension()) : "";
                Paragraph.print(inner + "measured: ", inner + "  ", m.measurement().how() + error, out);
                grounds(m.measurement().grounds(), inner, told.grounds(), out);
            }
            case Derivation.Stated(Given given) -> {
                boolean count = count(given.likely(), given.dimension()) && count(given.low(), given.dimension()) && count(given.high(), given.dimension());
                String range = given.ranged() ? words(given.low(), given.dimension(), count) + " to " + words(given.high(), given.dimension(), count) : "";
                head(indent, given.name(), words(given.likely(), given.dimension(), count), range, "", out);
                origin(given.origin(), inner, out);
            }
        }
    }

    /** What a measure rests on, a line each; what the tree has named before is not named again. */
    private void grounds(List<Ground> grounds, String indent, Set<Ground> told, StringBuilder out) {
        List<Ground> fresh = grounds.stream().filter(told::add).toList();
        List<Ground.Part> parts = fresh.stream().filter(Ground.Part.class::isInstance).map(Ground.Part.class::cast).toList();
        parts.stream().limit(PARTS_AT_MOST).forEach(part -> out.append(indent).append("on ").append(where(part.origin())).append('\n'));
        if (parts.size() > PARTS_AT_MOST) {
            out.append(indent).append("and ").append(parts.size() - PARTS_AT_MOST).append(" more\n");
        }
        fresh.stream().filter(ground -> !(ground instanceof Ground.Part))
                .forEach(ground -> Paragraph.print(indent + "on ", indent + "   ", words(ground), out));
        if (fresh.size() < grounds.size()) {
            out.append(indent).append(fresh.isEmpty() ? "on what is named above\n" : "and what is named above\n");
        }
    }

    private String words(Ground ground) {
        return switch (ground) {
            case Ground.Part(String label, Origin origin) -> where(origin);
            case Ground.Figure(Given given) -> given.name() + " " + words(given.likely(), given.dimension()) + "   " + where(given.origin());
            case Ground.Listed(String id, String label, Dimension dimension, double likely) -> label + " " + words(likely, dimension) + "   (" + id + ")";
        };
    }

    private static String where(Origin origin) {
        return switch (origin) {
            case Origin.Text text -> line(text) + " | " + Printable.of(text.source().strip());
            case Origin.Library(String library, String material, Origin.Text text) ->
                    line(text) + " " + library + " " + material + " | " + Printable.of(text.source().strip());
            case Origin.Assumed(String reason) -> "assumed: " + reason;
        };
    }

    private static String line(Origin.Text text) {
        return (text.file().isEmpty() ? "line " : text.file() + ":") + text.line();
    }

    private static void head(String indent, String label, String value, String range, String id, StringBuilder out) {
        String tail = (range.isEmpty() ? "" : "   " + range) + (id.isEmpty() ? "" : "   (" + id + ")");
        Paragraph.print(indent, indent + "  ", label + "   " + value + tail, out);
    }

    private static void origin(Origin origin, String indent, StringBuilder out) {
        switch (origin) {
            case Origin.Text text -> place(text, "", indent, out);
            case Origin.Library(String library, String material, Origin.Text text) -> place(text, "   " + library + " " + material, indent, out);
            case Origin.Assumed(String reason) -> Paragraph.print(indent + "assumed: ", indent + "  ", reason, out);
        }
    }

    private static void place(Origin.Text text, String where, String indent, StringBuilder out) {
        out.append(indent).append(line(text)).append(where).append('\n');
        if (!text.source().isBlank()) {
            out.append(indent).append("| ").append(Printable.of(text.source().strip())).append('\n');
        }
    }

    private String range(double low, double likely, double high, Dimension dimension) {
        boolean count = count(likely, dimension);
        return low < high ? words(low, dimension, count) + " to " + words(high, dimension, count) : "";
    }

    private String words(double si, Dimension dimension) {
        return words(si, dimension, count(si, dimension));
    }

    private String words(double si, Dimension dimension, boolean count) {
        return count ? Display.number(si) : display.format(si, dimension);
    }

    /** Whether a likely value is a plain number rather than a share, which is printed as a percentage. */
    private static boolean count(double likely, Dimension dimension) {
        return dimension.equals(Dimension.RATIO) && (Math.abs(likely) > 1 || likely == Math.rint(likely));
    }
}
