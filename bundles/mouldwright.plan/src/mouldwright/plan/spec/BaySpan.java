package mouldwright.plan.spec;

import java.util.Objects;

/** A stretch of the body from one named station to a later one; may cover several bays.
 *  @param from    forward station
 *  @param to      aft station
 *  @param origin  where it is stated */
public record BaySpan(String from, String to, Origin origin) {
    /** Refuses missing parts. */
    public BaySpan {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(origin, "origin");
    }
}
