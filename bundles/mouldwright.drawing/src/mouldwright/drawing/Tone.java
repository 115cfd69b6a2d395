package mouldwright.drawing;

/** What a colour is for; a palette says which it is, so that a drawing can stand on paper or on a dark screen. */
public enum Tone {
    /** Outlines and words. */ INK,
    /** What matters less. */ SOFT,
    /** What is only there to compare with. */ FAINT,
    /** What is cut. */ CUT,
    /** What is scored or marked. */ SCORE,
    /** The finished surface. */ SURFACE,
    /** Plywood. */ WOOD,
    /** Foam. */ FOAM,
    /** Laminate. */ LAMINATE,
    /** The low end of a ramp. */ LOW,
    /** The middle of a ramp. */ MIDDLE,
    /** The high end of a ramp. */ HIGH,
    /** What wants attention. */ ALARM
}
