package mouldwright.plan.spec;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** How fast a crew works, per person.
 *  @param carve  m2/s
 *  @param fair   m2/s
 *  @param sand   by grit
 *  @param plate  labour of one bulkhead, s
 *  @param pot    labour of one pot, s
 *  @param origin where declared */
public record Rates(String name, Optional<Given> carve, Optional<Given> fair, List<Sanding> sand, Optional<Given> plate,
        Optional<Given> pot, Origin origin) {

    /** Sanding with one grit.
     *  @param rate m2/s */
    public record Sanding(int grit, Given rate) { }

    /** Copies its list. */
    public Rates {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(carve, "carve");
        Objects.requireNonNull(fair, "fair");
        Objects.requireNonNull(plate, "plate");
        Objects.requireNonNull(pot, "pot");
        sand = List.copyOf(sand);
    }

    /** Rates that say nothing of plates and pots. */
    public Rates(String name, Optional<Given> carve, Optional<Given> fair, List<Sanding> sand, Origin origin) {
        this(name, carve, fair, sand, Optional.empty(), Optional.empty(), origin);
    }
}
