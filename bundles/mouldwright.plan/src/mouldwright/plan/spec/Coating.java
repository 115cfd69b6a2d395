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
 *  @param recoat    s
 *  @param curing    what cures it; empty for what dries by itself, and where nothing is stated */
public record Coating(String name, Optional<Given> density, Optional<Given> wet, Optional<Given> dry,
        Optional<Given> transfer, Optional<Given> coverage, Optional<Given> styrene, Optional<Given> recoat,
        Optional<Curing> curing, Stock stock) implements Material {

    /** What cures a coating.
     *  @param hardener its catalyst
     *  @param least    of it by weight of the coating
     *  @param most     of it by weight of the coating */
    public record Curing(Hardener hardener, Given least, Given most) {
        /** Refuses missing parts. */
        public Curing {
            Objects.requireNonNull(hardener, "hardener");
            Objects.requireNonNull(least, "least");
            Objects.requireNonNull(most, "most");
        }
    }

    /** Refuses missing parts. */
    public Coating {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(curing, "curing");
    }

    /** A coating that states no catalyst. */
    public Coating(String name, Optional<Given> density, Optional<Given> wet, Optional<Given> dry, Optional<Given> transfer,
            Optional<Given> coverage, Optional<Given> styrene, Optional<Given> recoat, Stock stock) {
        this(name, density, wet, dry, transfer, coverage, styrene, recoat, Optional.empty(), stock);
    }
}
