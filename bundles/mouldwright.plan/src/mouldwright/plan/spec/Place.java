package mouldwright.plan.spec;

import java.util.Objects;

/** A place round a section, at whatever station: on a line that runs along the body, or at a share of the girth. */
public sealed interface Place {

    /** On a declared line.
     *  @param line the line's name */
    record OnLine(String line) implements Place {
        /** Refuses a missing name. */
        public OnLine {
            Objects.requireNonNull(line, "line");
        }
    }

    /** At a share of the half girth from bottom centre, bare stretches counted, mirrored to the other side.
     *  @param share 0 at bottom centre to 1 at top centre */
    record AtShare(double share) implements Place {
        /** Refuses a share outside 0 to 1. */
        public AtShare {
            if (!(share >= 0 && share <= 1))
                throw new IllegalArgumentException("a share of the girth is 0 to 1: " + share);
        }
    }

    /** Bottom centre. */
    Place BOTTOM = new AtShare(0);
    /** Top centre. */
    Place TOP = new AtShare(1);
}
