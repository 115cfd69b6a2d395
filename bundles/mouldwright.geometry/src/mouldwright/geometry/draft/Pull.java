package mouldwright.geometry.draft;

/** The way a mould leaves the plug, a unit vector.
 *
 *  @param x aft
 *  @param y to starboard
 *  @param z up */
public record Pull(double x, double y, double z) {
    /** Away from the base. */
    public static final Pull UP = new Pull(0, 0, 1);
    /** Toward the base. */
    public static final Pull DOWN = new Pull(0, 0, -1);
    /** To starboard. */
    public static final Pull STARBOARD = new Pull(0, 1, 0);
    /** To port. */
    public static final Pull PORT = new Pull(0, -1, 0);
    /** Forward. */
    public static final Pull FORWARD = new Pull(-1, 0, 0);
    /** Aft. */
    public static final Pull AFT = new Pull(1, 0, 0);
}
