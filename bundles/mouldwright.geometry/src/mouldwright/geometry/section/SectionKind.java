package mouldwright.geometry.section;

/** How the sections of a body are given; one plug uses one kind throughout. */
public enum SectionKind {
    /** From bottom centre round the starboard side to top centre, mirrored to port. */
    HALF,
    /** Closed, from bottom centre round the starboard side first and back to bottom centre, half-breadths signed. */
    FULL
}
