package mouldwright.plan.spec;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** A laminating resin.
 *  @param density      as liquid, kg/m3
 *  @param cured        density cured, kg/m3
 *  @param styrene      share by mass
 *  @param waxed        cures without tack
 *  @param hardener     its catalyst
 *  @param leastCatalyst  share by mass of resin
 *  @param mostCatalyst   share by mass of resin
 *  @param gel          the supplier's gel times
 *  @param pot          greatest pot, kg
 *  @param recoat       later than this the surface is abraded before the next ply, s
 *  @param hard         ready for the next compound, s
 *  @param stock        what every entry may state */
public record Resin(String name, Given density, Given cured, Optional<Given> styrene, boolean waxed,
        Optional<Hardener> hardener, Optional<Given> leastCatalyst, Optional<Given> mostCatalyst, List<GelRow> gel,
        Optional<Given> pot, Optional<Given> recoat, Optional<Given> hard, Stock stock) implements Material {

    /** One row of a gel table.
     *  @param temperature  degC
     *  @param catalyst     share by mass of resin
     *  @param time         s */
    public record GelRow(double temperature, double catalyst, double time, Origin origin) { }

    /** Copies its table. */
    public Resin {
        Objects.requireNonNull(name, "name");
        gel = List.copyOf(gel);
    }
}
