package mouldwright.plan.spec;

import mouldwright.units.Dimension;

/** Defaults of the drawn body, each with the reason for its figure. A default that is used is listed in the plan as assumed. */
public final class BodyDefaults {

    private BodyDefaults() { }

    /** Bare lengths are millimetres. */
    public static Tacit units() {
        return new Tacit.Choice("units", "mm", new Origin.Assumed("drawings are dimensioned in millimetres unless they say otherwise"));
    }

    /** Sections are drawn for one half. */
    public static Tacit sections() {
        return new Tacit.Choice("sections", "half", new Origin.Assumed("most bodies are alike on both sides, and lines are drawn for one"));
    }

    /** A superellipse is an ellipse. */
    public static Given exponent() {
        return Given.byDefault("superellipse exponent", Dimension.RATIO, 2, "2 is the ellipse");
    }

    /** A superellipse stands on the base, m. */
    public static Given above() {
        return Given.byDefault("superellipse above base", Dimension.LENGTH, 0, "it stands on the base unless raised");
    }

    /** What a scaled section is scaled about. */
    public static Tacit centre() {
        return new Tacit.Choice("scaled about", "0 0", new Origin.Assumed("a section is scaled about the centreline at the base"));
    }

    /** Total shrink of mould and part, a share. */
    public static Given shrink() {
        return Given.byDefault("shrink", Dimension.RATIO, 0,
                "no shrink is allowed for; 0.1 to 0.5 % is common for mat laminates");
    }

    /** End faces are bare. */
    public static Body.End end() {
        return new Body.End(false, new Origin.Assumed("an end face is bare unless the spec says moulded"));
    }
}
