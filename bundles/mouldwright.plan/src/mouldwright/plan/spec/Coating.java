package mouldwright.plan.spec;

import java.util.Objects;
import java.util.Optional;

/** Something put on in coats: surfacer, gel coat, wax, release film.
 *  @param density   kg/m3
 *  @param wet       wet film of a coat, m
 *  @param dry       dry film of a coat, m
 *  @param transfer  share that lands on the work
 *  @param coverage  area covered by a coat, m2 for each kg or m3, as its dimension says
 *  @param styrene   share by mass
 *  @param recoat    s */
public record Coating(String name, Optional<Given> density, Optional<Given> wet, Optional<Given> dry,
        Optional<Given> transfer, Optional<Given> coverage, Optional<Given> styrene, Optional<Given> recoat,
        Stock stock) implements Material {
    /** Refuses missing parts. */
    public Coating {
        Objects.requireNonNull(name, "name");
    }
}
