package mouldwright.plan.spec;

import java.util.Objects;

/** How the air of the shop is to be thinned out.
 *  @param limit       of styrene in it, a share by volume
 *  @param mixing      how much more air than perfectly mixed air would need, 1 or more
 *  @param temperature of the air, degC */
public record Airing(Given limit, Given mixing, Given temperature) {
    /** Refuses missing parts. */
    public Airing {
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(mixing, "mixing");
        Objects.requireNonNull(temperature, "temperature");
    }
}
