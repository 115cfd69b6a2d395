package mouldwright.plan.spec;

import java.util.Objects;
import java.util.Optional;

/** A filler.
 *  @param density  kg/m3
 *  @param layer    greatest layer, m
 *  @param total    greatest total thickness, m
 *  @param hard     s */
public record Filler(String name, Optional<Given> density, Optional<Given> layer, Optional<Given> total,
        Optional<Given> hard, Stock stock) implements Material {
    /** Refuses missing parts. */
    public Filler {
        Objects.requireNonNull(name, "name");
    }
}
