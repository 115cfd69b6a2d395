package mouldwright.geometry.loft;

/** A place round the girth that has a meaning at every x. It is mirrored: each place lies on both sides. */
public sealed interface GirthPlace {
    /** On a named longitudinal line. On a full body a line marked on one side only is taken at the same share on the other.
     *  @param name the line */
    record OnLine(String name) implements GirthPlace { }

    /** At a share of the half girth from bottom centre at that x, bare stretches and closures counted.
     *  @param share 0 at bottom centre to 1 at top centre */
    record AtShare(double share) implements GirthPlace { }

    /** Where the section is broadest at that x: there the normal stands level, and a mould that is pulled up or down is parted. Of
     *  an upright wall its lower end, so that the whole wall lies above it. */
    record Broadest() implements GirthPlace { }

    /** Bottom centre. */
    GirthPlace BOTTOM = new AtShare(0);
    /** Top centre. */
    GirthPlace TOP = new AtShare(1);
}
