package mouldwright.report;

import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Quantity;
import mouldwright.plan.ledger.Derivation;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.SpellingDistance;
import mouldwright.units.UnitSystem;

/**
 * How one quantity came about, as an indented tree: the formula in words and its source, then what it rests on, down to lines of the spec,
 * entries of libraries, defaults with their reason, and measures of the shape. A branch that two figures share is printed once.
 */
public final class Explanation {

    private static final int NEAREST = 5;
    private static final String STEP = "    ";

    private final Display display;

    /** @param system family of units the figures are shown in */
    public Explanation(UnitSystem system) {
        this.display = Display.of(system);
    }

    /** The tree of a quantity, with the cautions of its stage; empty if the plan has no such quantity. */
    public Optional<String> print(BuildPlan plan, String id) {
        return plan.derivation(id).map(derivation -> {
            StringBuilder out = new StringBuilder();
            node(derivation, "", Collections.newSetFromMap(new IdentityHashMap<>()), out);
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

    private void node(Derivation derivation, String indent, Set<Derivation> printed, StringBuilder out) {
        String inner = indent + STEP;
        boolean shared = !printed.add(derivation);
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
                r.inputs().forEach(input -> node(input, inner, printed, out));
            }
            case Derivation.Measured m -> {
                head(indent, m.label(), words(m.value(), m.dimension()), "", m.id(), out);
                String error = m.measurement().error() > 0 ? ", within " + words(m.measurement().error(), m.dimension()) : "";
                Paragraph.print(inner + "measured: ", inner + "  ", m.measurement().how() + error, out);
            }
            case Derivation.Stated(Given given) -> {
                boolean count = count(given.likely(), given.dimension()) && count(given.low(), given.dimension()) && count(given.high(), given.dimension());
                String range = given.ranged() ? words(given.low(), given.dimension(), count) + " to " + words(given.high(), given.dimension(), count) : "";
                head(indent, given.name(), words(given.likely(), given.dimension(), count), range, "", out);
                origin(given.origin(), inner, out);
            }
        }
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
        out.append(indent).append(text.file().isEmpty() ? "line " : text.file() + ":").append(text.line()).append(where).append('\n');
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
