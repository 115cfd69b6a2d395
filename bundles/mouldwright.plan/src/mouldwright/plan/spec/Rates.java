package mouldwright.plan.spec;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** How fast a crew works, per person.
 *  @param carve  m2/s
 *  @param fair   m2/s
 *  @param sand   by grit
 *  @param origin where declared */
public record Rates(String name, Optional<Given> carve, Optional<Given> fair, List<Sanding> sand, Origin origin) {

    /** Sanding with one grit.
     *  @param rate m2/s */
    public record Sanding(int grit, Given rate) { }

    /** Copies its list. */
    public Rates {
        Objects.requireNonNull(name, "name");
        sand = List.copyOf(sand);
    }
}
