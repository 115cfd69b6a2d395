package mouldwright.geometry.section;

/** Where a longitudinal line crosses a section that has no point on it. The line borders a stretch there but makes no
 *  crease; where a knuckle already lies at that place the knuckle takes the name. */
public sealed interface LinePlace {
    /** Name of the longitudinal line. */
    String line();

    /** The first place, going from bottom centre up the starboard side, where the outline reaches a height.
     *  For a full section this is the first crossing from its start as well, hence on the starboard side.
     *  @param line   name
     *  @param height above the base, metres */
    record AtHeight(String line, double height) implements LinePlace { }

    /** At a share of the half girth from bottom centre on the starboard side, closures counted.
     *  @param line  name
     *  @param share 0 at bottom centre to 1 at top centre */
    record AtGirth(String line, double share) implements LinePlace { }
}
