package mouldwright.geometry.fill;

/** How the plug lies while a bay is poured: which way is up, in the section plane.
 *
 *  @param upY part of the upward unit vector to starboard
 *  @param upZ part of the upward unit vector away from the base */
public record Attitude(double upY, double upZ) {
    /** On its base. */
    public static final Attitude UPRIGHT = new Attitude(0, 1);
    /** Base uppermost. */
    public static final Attitude UPSIDE_DOWN = new Attitude(0, -1);
    /** Starboard side uppermost. */
    public static final Attitude ON_SIDE = new Attitude(1, 0);
}
