package mouldwright.process;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How much of component A goes with how much of B in a two-part foam.
 *
 * @param a     parts of A
 * @param b     parts of B
 * @param basis whether the parts are weighed or measured
 */
public record MixRatio(double a, double b, Basis basis) {

    /** How the parts are told off. */
    public enum Basis {
        /** On a scale. */
        WEIGHT,
        /** In a measure. */
        VOLUME
    }

    /**
     * Densities of the two liquids, kg/m3.
     *
     * @param a of component A
     * @param b of component B
     */
    public record Densities(double a, double b) {

        /** Refuses a density that is not above zero. */
        public Densities {
            Require.positive(a, "density of A");
            Require.positive(b, "density of B");
        }
    }

    /**
     * An amount of mixed foam told off into its parts.
     *
     * @param massA          kg of A
     * @param massB          kg of B
     * @param volumeA        m3 of A, where its density is known
     * @param volumeB        m3 of B, where its density is known
     * @param assumedEqually whether the masses rest on equal densities, for want of stated ones, though the ratio is by
     *                       volume
     */
    public record Parts(double massA, double massB, OptionalDouble volumeA, OptionalDouble volumeB,
            boolean assumedEqually) { }

    /** Refuses parts that are not above zero. */
    public MixRatio {
        Require.positive(a, "parts of A");
        Require.positive(b, "parts of B");
    }

    /**
     * Density of the mixed liquid, kg/m3: (a + b) / (a/rhoA + b/rhoB) by weight, (a rhoA + b rhoB) / (a + b) by volume.
     * Source: mass balance; no change of volume on mixing.
     */
    public double mixedDensity(Densities densities) {
        return basis == Basis.WEIGHT
                ? (a + b) / (a / densities.a() + b / densities.b())
                : (a * densities.a() + b * densities.b()) / (a + b);
    }

    /** The share of A in the mass of the mix. */
    public double massShareOfA(Densities densities) {
        return basis == Basis.WEIGHT ? a / (a + b)
                : a * densities.a() / (a * densities.a() + b * densities.b());
    }

    /**
     * Tells a mass of mix off into A and B. A ratio by volume without densities is taken by mass as it stands, and the
     * answer says so.
     *
     * @param mass      kg of mixed foam
     * @param densities of the two liquids, if known
     */
    public Parts split(double mass, Optional<Densities> densities) {
        Require.notNegative(mass, "mass of mix");
        double share = densities.map(this::massShareOfA).orElse(a / (a + b));
        double massA = mass * share;
        double massB = mass - massA;
        return new Parts(massA, massB,
                densities.map(d -> OptionalDouble.of(massA / d.a())).orElse(OptionalDouble.empty()),
                densities.map(d -> OptionalDouble.of(massB / d.b())).orElse(OptionalDouble.empty()),
                basis == Basis.VOLUME && densities.isEmpty());
    }
}
