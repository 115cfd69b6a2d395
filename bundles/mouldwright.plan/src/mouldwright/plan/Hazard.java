package mouldwright.plan;

/** What can hurt somebody at a task, in the words it is printed with wherever a pot, a pour, a cure or a weight is shown. None of them is a permission. */
public enum Hazard {
    /** Isocyanate of a two-part foam. */
    ISOCYANATE("Foam part B is an isocyanate and makes people allergic for life: filtered air, gloves, goggles."),
    /** Heat of a pour, a pot or a thick laminate. */
    EXOTHERM("Pours and pots heat themselves and can burn hours later: keep to the limits stated, watch them."),
    /** Vapour of polyester and gel coat. */
    STYRENE("Styrene vapour harms and burns: give air, keep sparks away, wear a vapour mask."),
    /** Catalyst. */
    PEROXIDE("Catalyst is an organic peroxide: it blinds and burns; keep it cool and off accelerator."),
    /** Dust of foam, filler, wood and laminate. */
    DUST("Dust of foam, filler, wood and laminate harms lungs and can explode: extract it, wear a mask."),
    /** Weights to lift and turn. */
    LIFTING("Weigh before lifting; turn and lift heavy pieces with enough people or gear made for it.");

    /** Printed after any caution. */
    public static final String DEFERENCE = "Estimates, no permission: supplier's data sheet, local codes and licensed practice come first.";

    private final String words;

    Hazard(String words) {
        this.words = words;
    }

    /** What is printed. */
    public String words() {
        return words;
    }
}
