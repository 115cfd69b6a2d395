package mouldwright.report;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import mouldwright.plan.Hazard;

/**
 * What can hurt people, in the words it is printed with wherever a pot, a pour, a cure or a weight is shown. The tool defers: none of its
 * figures is a permission.
 */
public enum Caution {
    /** Two-part urethane foam. */
    ISOCYANATE(Hazard.ISOCYANATE.words()),
    /** Heat of a pour or a pot. */
    EXOTHERM(Hazard.EXOTHERM.words()),
    /** Polyester and gel coat. */
    STYRENE(Hazard.STYRENE.words()),
    /** The hardener of polyester. */
    PEROXIDE(Hazard.PEROXIDE.words()),
    /** Carving and sanding. */
    DUST(Hazard.DUST.words()),
    /** Wax and release film. */
    SOLVENT("Wax and release film give off solvent that burns: give air, keep sparks away, wear gloves."),
    /** Air to thin out vapour. */
    VENTILATION("Thinning out a room is no stand-in for exhaust at the work: local codes and a licensed person decide."),
    /** Weights. */
    LIFTING(Hazard.LIFTING.words());

    /** Printed after any caution. */
    public static final String DEFERENCE = Hazard.DEFERENCE;

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
