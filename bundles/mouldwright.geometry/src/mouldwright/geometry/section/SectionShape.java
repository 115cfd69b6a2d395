package mouldwright.geometry.section;

/** What a section amounts to as a figure of the plane. */
public enum SectionShape {
    /** An outline with area. */
    BODY,
    /** All its points lie on one straight line, as at a stem or a trailing edge; it bears no plate. */
    KNIFE_EDGE,
    /** A single point, as at a nose; it bears no plate. */
    POINT
}
