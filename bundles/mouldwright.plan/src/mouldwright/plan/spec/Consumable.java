package mouldwright.plan.spec;

import java.util.Objects;
import java.util.Optional;

/** Something a job wears out or throws away. One is used up for each so much of the work; where several are stated, they add up.
 *  @param area   of mat laid that uses one up, m2
 *  @param labour that uses one up, s
 *  @param pours  of foam that use one up
 *  @param pots   mixed that use one up */
public record Consumable(String name, Optional<Given> area, Optional<Given> labour, Optional<Given> pours, Optional<Given> pots,
        Stock stock) implements Material {
    /** Refuses missing parts. */
    public Consumable {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(area, "area");
        Objects.requireNonNull(labour, "labour");
        Objects.requireNonNull(pours, "pours");
        Objects.requireNonNull(pots, "pots");
        Objects.requireNonNull(stock, "stock");
    }
}
