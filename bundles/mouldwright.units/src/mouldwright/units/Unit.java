package mouldwright.units;

import java.util.Objects;

/**
 * A unit of measure: its spelling, what it measures, and the way from a number in it to SI.
 *
 * <p>{@code si = (value + shift) * multiplier / divisor}. The factor is kept as two whole numbers wherever the
 * definition allows, since 9 mm taken as 9/1000 is 0.009 exactly as written, and taken as 9 x 0.001 it is not.
 *
 * @param symbol     the spelling of the language, {@code "oz/ft2"}
 * @param dimension  what it measures
 * @param multiplier upper part of the factor to SI, positive
 * @param divisor    lower part of the factor to SI, positive
 * @param shift      added to the number first; other than 0 only for temperatures
 * @param ucum       code in the Unified Code for Units of Measure, {@code "[oz_av]/[ft_i]2"}; degC is {@code "Cel"}
 */
public record Unit(String symbol, Dimension dimension, double multiplier, double divisor, double shift, String ucum) {

    /** Refuses a factor that is not a positive finite number. */
    public Unit {
        Objects.requireNonNull(symbol);
        Objects.requireNonNull(dimension);
        Objects.requireNonNull(ucum);
        if (!(multiplier > 0 && divisor > 0 && Double.isFinite(multiplier / divisor) && Double.isFinite(shift))) {
            throw new IllegalArgumentException("no factor to SI: " + symbol);
        }
    }

    /** One of this unit in SI, leaving out any shift. */
    public double factor() {
        return multiplier / divisor;
    }

    /**
     * A reading in this unit, in SI; temperatures come out in degC, angles in radians, percentages as fractions.
     *
     * @throws NotANumber if the result is not a finite number
     */
    public double toSi(double value) {
        return NotANumber.unlessFinite((value + shift) * multiplier / divisor, value + " " + symbol);
    }

    /**
     * A difference of two readings in this unit, in SI: 9 degF of difference are 5 degC of difference.
     *
     * @throws NotANumber if the result is not a finite number
     */
    public double toSiDifference(double value) {
        return NotANumber.unlessFinite(value * multiplier / divisor, value + " " + symbol);
    }

    /**
     * An SI figure as a number in this unit.
     *
     * @throws NotANumber if the result is not a finite number
     */
    public double fromSi(double si) {
        return NotANumber.unlessFinite(si * divisor / multiplier - shift, si + " in " + symbol);
    }
}
