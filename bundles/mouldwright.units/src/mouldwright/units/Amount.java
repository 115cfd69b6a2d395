package mouldwright.units;

import java.util.Objects;

/**
 * A number in SI with what it measures, for the small formulas of a spec: {@code (60 mm + 2 * wall)}.
 *
 * <p>A temperature is a reading. It can be compared with another ({@link #min}, {@link #max}), but not added, scaled or
 * negated: twice 20 degC is one thing on a Celsius thermometer and another on a Fahrenheit one, so it has no meaning.
 *
 * <p>No NaN and no infinity ever leaves: every operation either answers with a finite amount or throws a {@link Refusal}.
 *
 * @param si        the number in SI, finite
 * @param dimension what it measures
 */
public record Amount(double si, Dimension dimension) {

    /**
     * Refuses what is not finite.
     *
     * @throws NotANumber if {@code si} is not a finite number
     */
    public Amount {
        Objects.requireNonNull(dimension);
        NotANumber.unlessFinite(si, "the result");
        si = si + 0.0; // a negative zero would be printed as one
    }

    /** A plain number. */
    public static Amount plain(double value) {
        return new Amount(value, Dimension.RATIO);
    }

    /**
     * A written number with its unit.
     *
     * @throws NotANumber if the SI figure overflows
     */
    public static Amount of(double value, Unit unit) {
        return new Amount(unit.toSi(value), unit.dimension());
    }

    /**
     * Sum of two amounts of one dimension.
     *
     * @throws DimensionMismatch if they do not measure the same thing
     * @throws NotANumber        on overflow, or if they are temperatures
     */
    public Amount plus(Amount other) {
        requireSame(other);
        requireNoReading("added");
        return new Amount(si + other.si, dimension);
    }

    /**
     * Difference of two amounts of one dimension.
     *
     * @throws DimensionMismatch if they do not measure the same thing
     * @throws NotANumber        on overflow, or if they are temperatures
     */
    public Amount minus(Amount other) {
        requireSame(other);
        requireNoReading("subtracted");
        return new Amount(si - other.si, dimension);
    }

    /**
     * Product; the dimensions multiply.
     *
     * @throws NotANumber on overflow, or if either is a temperature
     */
    public Amount times(Amount other) {
        requireNoReading("multiplied");
        other.requireNoReading("multiplied");
        return new Amount(si * other.si, dimension.times(other.dimension));
    }

    /**
     * Quotient; the dimensions divide.
     *
     * @throws NotANumber on a division by zero, on overflow, or if either is a temperature
     */
    public Amount over(Amount other) {
        requireNoReading("divided");
        other.requireNoReading("divided");
        if (other.si == 0) {
            throw new NotANumber("division by zero");
        }
        return new Amount(si / other.si, dimension.over(other.dimension));
    }

    /**
     * The amount with its sign turned.
     *
     * @throws NotANumber if it is a temperature: the sign belongs to the number before its unit, as -5 degF is not
     *                    the opposite of 5 degF
     */
    public Amount negate() {
        requireNoReading("negated");
        return new Amount(-si, dimension);
    }

    /**
     * The smaller of two amounts of one dimension.
     *
     * @throws DimensionMismatch if they do not measure the same thing
     */
    public Amount min(Amount other) {
        requireSame(other);
        return si <= other.si ? this : other;
    }

    /**
     * The larger of two amounts of one dimension.
     *
     * @throws DimensionMismatch if they do not measure the same thing
     */
    public Amount max(Amount other) {
        requireSame(other);
        return si >= other.si ? this : other;
    }

    private void requireSame(Amount other) {
        if (!dimension.equals(other.dimension)) {
            throw new DimensionMismatch(dimension, other.dimension);
        }
    }

    private void requireNoReading(String done) {
        if (dimension.temperature() != 0) {
            throw new NotANumber("a temperature is a reading and cannot be " + done);
        }
    }
}
