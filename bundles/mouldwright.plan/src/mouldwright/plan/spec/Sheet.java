package mouldwright.plan.spec;

import java.util.Objects;
import java.util.Optional;

/** Sheet material for plates.
 *  @param width      m
 *  @param length     m
 *  @param thickness  nominal, m
 *  @param density    kg/m3
 *  @param kerf       of the cut, m */
public record Sheet(String name, Given width, Given length, Given thickness, Given density, Optional<Given> kerf,
        Stock stock) implements Material {
    /** Refuses missing parts. */
    public Sheet {
        Objects.requireNonNull(name, "name");
    }
}
