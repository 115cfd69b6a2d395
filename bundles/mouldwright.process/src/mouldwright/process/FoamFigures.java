package mouldwright.process;

import java.util.OptionalDouble;

/**
 * Whether the figures of a foam's sheet agree: expansion x density is the density of the liquid the sheet implies. A
 * published slip of the kind it finds: "1 kg yields 0.08 m3 (1 cubic foot)", which is 0.0283 m3.
 *
 * @param impliedLiquidDensity expansion x free-rise density, kg/m3
 * @param deviation            relative difference from the liquid's own density; empty where that is not known
 * @param disagree             whether the difference is over {@link #DISAGREEMENT}
 * @param implausible          whether the implied density, or the liquid's own, lies outside {@link #LIQUID}
 */
public record FoamFigures(double impliedLiquidDensity, OptionalDouble deviation, boolean disagree, boolean implausible) {

    /** What the two may differ by. */
    public static final double DISAGREEMENT = 0.10;

    /** Liquid urethane components and their mixes, kg/m3: polyols 1100 to 1140, isocyanates 1200 to 1240, with room. */
    public static final Range LIQUID = new Range(1000, 1170, 1250);

    /**
     * Compares the figures.
     *
     * @param expansion    nominal volume of foam to one of liquid
     * @param density      free-rise density, kg/m3
     * @param mixedDensity density of the mixed liquid, kg/m3, where the components' densities are known
     */
    public static FoamFigures of(double expansion, double density, OptionalDouble mixedDensity) {
        double implied = Require.positive(expansion, "expansion") * Require.positive(density, "foam density");
        OptionalDouble deviation = mixedDensity.isPresent()
                ? OptionalDouble.of(implied / Require.positive(mixedDensity.getAsDouble(), "density of the mix") - 1)
                : OptionalDouble.empty();
        boolean disagree = deviation.isPresent() && Math.abs(deviation.getAsDouble()) > DISAGREEMENT;
        boolean implausible = isOutside(implied)
                || mixedDensity.isPresent() && isOutside(mixedDensity.getAsDouble());
        return new FoamFigures(implied, deviation, disagree, implausible);
    }

    private static boolean isOutside(double liquidDensity) {
        return liquidDensity < LIQUID.low() || liquidDensity > LIQUID.high();
    }
}
