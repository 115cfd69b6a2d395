package mouldwright.plan.spec;

import java.util.Objects;
import java.util.Optional;

/** How the air of the shop is to be thinned out.
 *  @param limit       of styrene in it, a share by volume
 *  @param mixing      how much more air than perfectly mixed air would need, 1 or more
 *  @param temperature of the air, degC
 *  @param supply      fresh air the shop has, m3/s; empty where nothing is stated */
public record Airing(Given limit, Given mixing, Given temperature, Optional<Given> supply) {
    /** Refuses missing parts. */
    public Airing {
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(mixing, "mixing");
        Objects.requireNonNull(temperature, "temperature");
        Objects.requireNonNull(supply, "supply");
    }

    /** Air of a shop that does not say how much of it is fresh. */
    public Airing(Given limit, Given mixing, Given temperature) {
        this(limit, mixing, temperature, Optional.empty());
    }
}
