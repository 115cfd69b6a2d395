package mouldwright.report;

import java.util.List;
import java.util.Map;
import java.util.Set;
import mouldwright.plan.ledger.Derivation;
import mouldwright.plan.ledger.Ground;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** How a figure came about, one step back: the formula, its source, and what it rests on. */
final class Told {

    private static final int GROUNDS_AT_MOST = 8;

    private final Display display;

    Told(Display display) {
        this.display = display;
    }

    /** @param listed ids of figures the paper shows elsewhere */
    Map<String, Object> of(Derivation derivation, Set<String> listed) {
        return switch (derivation) {
            case Derivation.Reckoned reckoned -> how(reckoned.formula(), reckoned.source(), reckoned.inputs().stream().map(input -> input(input, listed)).toList());
            case Derivation.Measured measured -> how("measured: " + measured.measurement().how(), "",
                    measured.measurement().grounds().stream().limit(GROUNDS_AT_MOST).map(Told::ground).toList());
            case Derivation.Stated(Given given) -> how("as stated", "", List.of(input(derivation, listed)));
        };
    }

    private static Map<String, Object> how(String formula, String source, List<Map<String, Object>> inputs) {
        return Map.of("formula", Printable.of(formula), "source", Printable.of(source), "inputs", inputs);
    }

    private static Map<String, Object> ground(Ground ground) {
        return Map.of("label", "on", "value", Printable.of(ground.words()), "id", "", "origin", "");
    }

    private Map<String, Object> input(Derivation input, Set<String> listed) {
        String id = switch (input) {
            case Derivation.Reckoned reckoned -> reckoned.id();
            case Derivation.Measured measured -> measured.id();
            case Derivation.Stated stated -> "";
        };
        String origin = input instanceof Derivation.Stated(Given given) ? origin(given.origin()) : "";
        return Map.of("label", Printable.of(input.label()), "value", words(input.value(), input.dimension()), "id", listed.contains(id) ? id : "", "origin", origin);
    }

    private String words(double si, Dimension dimension) {
        boolean count = dimension.equals(Dimension.RATIO) && (Math.abs(si) > 1 || si == Math.rint(si));
        return count ? Display.number(si) : display.format(si, dimension);
    }

    private static String origin(Origin origin) {
        return Printable.of(switch (origin) {
            case Origin.Text text -> line(text);
            case Origin.Library(String library, String material, Origin.Text text) -> library + " " + material + ", " + line(text);
            case Origin.Assumed(String reason) -> "assumed: " + reason;
        });
    }

    private static String line(Origin.Text text) {
        return (text.file().isEmpty() ? "line " : text.file() + ":") + text.line();
    }
}
