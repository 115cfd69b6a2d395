package mouldwright.report;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What can hurt people, in the words it is printed with wherever a pot, a pour, a cure or a weight is shown. The tool defers: none of its
 * figures is a permission.
 */
public enum Caution {
    /** Two-part urethane foam. */
    ISOCYANATE("Foam part B is an isocyanate and makes people allergic for life: filtered air, gloves, goggles."),
    /** Heat of a pour or a pot. */
    EXOTHERM("Pours and pots heat themselves and can burn hours later: keep to the limits stated, watch them."),
    /** Polyester and gel coat. */
    STYRENE("Styrene vapour harms and burns: give air, keep sparks away, wear a vapour mask."),
    /** The hardener of polyester. */
    PEROXIDE("Catalyst is an organic peroxide: it blinds and burns; keep it cool and off accelerator."),
    /** Carving and sanding. */
    DUST("Dust of foam, filler, wood and laminate harms lungs and can explode: extract it, wear a mask."),
    /** Wax and release film. */
    SOLVENT("Wax and release film give off solvent that burns: give air, keep sparks away, wear gloves."),
    /** Air to thin out vapour. */
    VENTILATION("Thinning out a room is no stand-in for exhaust at the work: local codes and a licensed person decide."),
    /** Weights. */
    LIFTING("Weigh before lifting; turn and lift heavy pieces with enough people or gear made for it.");

    /** Printed after any caution. */
    public static final String DEFERENCE = "Estimates, no permission: supplier's data sheet, local codes and licensed practice come first.";

    private final String words;

    Caution(String words) {
        this.words = words;
    }

    /** What is printed. */
    public String words() {
        return words;
    }

    /** The cautions that go with a stage's figures, in the order they are printed; none for a stage that measures only. */
    public static List<Caution> of(String stage) {
        return switch (stage) {
            case "frame" -> List.of(DUST, LIFTING);
            case "fill" -> List.of(ISOCYANATE, EXOTHERM, DUST, LIFTING);
            case "carve" -> List.of(DUST);
            case "fair" -> List.of(STYRENE, PEROXIDE, DUST);
            case "skin" -> List.of(STYRENE, PEROXIDE, EXOTHERM, DUST);
            case "finish" -> List.of(STYRENE, PEROXIDE, DUST);
            case "release" -> List.of(SOLVENT);
            case "mould" -> List.of(STYRENE, PEROXIDE, EXOTHERM, DUST, LIFTING);
            case "shape", "orders", "cost" -> List.of();
            case "plan" -> List.of(ISOCYANATE, EXOTHERM, STYRENE, PEROXIDE, DUST, LIFTING);
            case "mass" -> List.of(LIFTING);
            case "air" -> List.of(STYRENE, VENTILATION);
            default -> List.of(values());
        };
    }

    /** The cautions of several stages, each once. */
    public static List<Caution> of(Iterable<String> stages) {
        Set<Caution> all = EnumSet.noneOf(Caution.class);
        for (String stage : stages) {
            all.addAll(of(stage));
        }
        return List.copyOf(all);
    }
}
