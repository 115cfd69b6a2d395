package mouldwright.process;

import java.util.OptionalDouble;

/**
 * Catalyst by the measure, working time and pots of resin. Figures give way to the supplier's sheet; peroxide catalyst is
 * never brought together with accelerator.
 */
public final class Cure {

    /** Share of the gel time a brush can work in. Common practice, an assumed default. */
    public static final double WORKING_SHARE = 0.7;

    /** Density of MEKP catalyst, kg/m3, where the library states none. From memory. */
    public static final double CATALYST_DENSITY = 1160;

    /** What a supplier's chart counts with that takes 1 g of catalyst for 1 ml, kg/m3. */
    public static final double CHART_CATALYST_DENSITY = 1000;

    /**
     * Pots of catalysed resin.
     *
     * @param first    the first pot, half of the others until the cure is known, kg
     * @param each     every further pot at most, kg
     * @param count    how many in all
     * @param potLimit whether the resin's pot limit, and not the laying, sets the size
     */
    public record Pots(double first, double each, int count, boolean potLimit) { }

    private Cure() { }

    /** Time to lay up in, s, 0.7 of the gel time. */
    public static double workingTime(double gelTime) {
        return WORKING_SHARE * Require.positive(gelTime, "gel time");
    }

    /** Catalyst for a mass of resin, kg. */
    public static double catalystMass(double resinMass, double catalyst) {
        return Require.notNegative(resinMass, "mass of resin") * Require.fraction(catalyst, "catalyst");
    }

    /** Catalyst by the measure, m3: ml = g / density in g/ml. */
    public static double catalystVolume(double resinMass, double catalyst, double catalystDensity) {
        return catalystMass(resinMass, catalyst) / Require.positive(catalystDensity, "catalyst density");
    }

    /**
     * Catalyst by temperature for a resin that states no gel table: 4 % from 5 degC, 3 % from 13, 2 % from 16, 1 % from
     * 20 to 35 degC. Source: East Coast Fibreglass, catalyst addition chart (M50 class).
     *
     * @param temperature degC
     * @return share of the resin's mass; empty outside 5 to 35 degC
     */
    public static OptionalDouble guide(double temperature) {
        Require.finite(temperature, "temperature");
        if (temperature < 5 || temperature > 35) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(temperature < 13 ? 0.04 : temperature < 16 ? 0.03 : temperature < 20 ? 0.02 : 0.01);
    }

    /**
     * Largest pot that is laid before it stiffens: lay rate x persons x resin per area x working time, and the pot limit.
     *
     * @param layRate      of one person, m2/s
     * @param persons      laying from the pot at once
     * @param resinPerArea of the ply laid, kg/m2
     * @param gelTime      s
     * @param potLimit     the resin's, kg
     * @return kg
     */
    public static double largestPot(double layRate, int persons, double resinPerArea, double gelTime, double potLimit) {
        return Math.min(laidInTime(layRate, persons, resinPerArea, gelTime), Require.positive(potLimit, "pot limit"));
    }

    /**
     * The pots a mass of resin is mixed in: the first half a pot, the others at most a whole one.
     *
     * @param resin        to lay, kg, above zero
     * @param layRate      of one person, m2/s
     * @param persons      laying from the pot at once
     * @param resinPerArea of the ply laid, kg/m2
     * @param gelTime      s
     * @param potLimit     the resin's, kg
     */
    public static Pots pots(double resin, double layRate, int persons, double resinPerArea, double gelTime,
            double potLimit) {
        Require.positive(resin, "resin");
        double laid = laidInTime(layRate, persons, resinPerArea, gelTime);
        double each = Math.min(laid, Require.positive(potLimit, "pot limit"));
        double first = Math.min(each / 2, resin);
        double rest = resin - first;
        int count = rest <= 0 ? 1 : 1 + Whole.count(rest, each, "pots");
        return new Pots(first, each, count, potLimit < laid);
    }

    /**
     * Linear shrinkage of neat resin from its shrinkage in volume, 1 - (1 - v)^(1/3): 7 % is 2.39 %. A laminate shrinks
     * far less, 0.1 to 0.5 % (memory).
     */
    public static double linearShrinkage(double volumeShrinkage) {
        return 1 - Math.cbrt(1 - Require.fraction(volumeShrinkage, "shrinkage in volume"));
    }

    /** What a plug is made larger by for a stated total shrinkage of mould and part, 1/(1 - s): 0.3 % is 1.003009. */
    public static double plugScale(double shrink) {
        if (!(shrink >= 0 && shrink < 1)) {
            throw new IllegalArgumentException("shrinkage must be 0 or more and below 1: " + shrink);
        }
        return 1 / (1 - shrink);
    }

    private static double laidInTime(double layRate, int persons, double resinPerArea, double gelTime) {
        return Require.positive(layRate, "lay rate") * Require.positive(persons, "persons")
                * Require.positive(resinPerArea, "resin per area") * workingTime(gelTime);
    }
}
