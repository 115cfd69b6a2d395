package mouldwright.plan.spec;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** A two-part pour foam.
 *  @param expansion    risen over liquid volume; empty where only densities are stated
 *  @param density      free-rise density, kg/m3
 *  @param ratio        how A and B are mixed
 *  @param partA        density of A, kg/m3
 *  @param partB        density of B, kg/m3
 *  @param cream        time from mixing until it rises, s
 *  @param rise         time until risen, s
 *  @param firm         time until the next pour may follow, s
 *  @param carve        time until it may be carved, s
 *  @param lift         greatest risen height of one pour, m
 *  @param pot          greatest pot, kg
 *  @param coldest      of its temperature range, degC
 *  @param warmest      of its temperature range, degC
 *  @param yield        share of the stated expansion reached, by shop temperature */
public record Foam(String name, Optional<Given> expansion, Given density, Optional<Ratio> ratio, Optional<Given> partA,
        Optional<Given> partB, Optional<Given> cream, Optional<Given> rise, Optional<Given> firm,
        Optional<Given> carve, Optional<Given> lift, Optional<Given> pot, Optional<Given> coldest,
        Optional<Given> warmest, List<YieldRow> yield, Stock stock) implements Material {

    /** How A and B are mixed, A first.
     *  @param byVolume  else by weight */
    public record Ratio(double a, double b, boolean byVolume, Origin origin) {
        /** Refuses parts that are not positive. */
        public Ratio {
            if (!(a > 0 && b > 0))
                throw new IllegalArgumentException("parts must be positive: " + a + " to " + b);
        }
    }

    /** One row of the yield table.
     *  @param temperature degC
     *  @param share       0 to 1 */
    public record YieldRow(double temperature, double share, Origin origin) { }

    /** Copies its table. */
    public Foam {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(density, "density");
        yield = List.copyOf(yield);
    }
}
