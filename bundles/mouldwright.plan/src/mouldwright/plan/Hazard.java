package mouldwright.plan;

/** What can hurt somebody at a task. Reports print the usual caution for each; none of them is a permission. */
public enum Hazard {
    /** Isocyanate of a two-part foam. */ ISOCYANATE,
    /** Heat of a pour, a pot or a thick laminate. */ EXOTHERM,
    /** Vapour of polyester and gel coat. */ STYRENE,
    /** Catalyst. */ PEROXIDE,
    /** Dust of foam, filler, wood and laminate. */ DUST,
    /** Weights to lift and turn. */ LIFTING
}
