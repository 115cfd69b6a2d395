package mouldwright.plan.spec;

import java.util.Objects;

/** A catalyst or hardener.
 *  @param density kg/m3 */
public record Hardener(String name, Given density, Stock stock) implements Material {
    /** Refuses missing parts. */
    public Hardener {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(density, "density");
    }
}
