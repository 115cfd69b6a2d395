package mouldwright.plan.spec;

import java.util.Objects;

/** A band round the girth, from one place up to another; mirrored in a half section.
 *  @param from    nearer bottom centre
 *  @param to      nearer top centre
 *  @param origin  where it is stated */
public record Band(Place from, Place to, Origin origin) {
    /** Refuses missing parts. */
    public Band {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(origin, "origin");
    }

    /** The whole girth.
     *  @param origin of the rule that names no band */
    public static Band whole(Origin origin) {
        return new Band(Place.BOTTOM, Place.TOP, origin);
    }
}
