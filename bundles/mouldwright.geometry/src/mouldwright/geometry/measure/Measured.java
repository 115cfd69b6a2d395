package mouldwright.geometry.measure;

/** A figure measured by quadrature.
 *
 *  @param value         in SI
 *  @param errorEstimate difference of two quadrature orders, not negative, in the same unit; it says how well the loft was
 *                       measured, not how well the loft follows the body its stations were taken from */
public record Measured(double value, double errorEstimate) {
    /** Nothing, exactly. */
    public static final Measured ZERO = new Measured(0, 0);

    /** The sum; estimates add, which is on the safe side. */
    public Measured plus(Measured other) {
        return new Measured(value + other.value, errorEstimate + other.errorEstimate);
    }

    /** The difference; estimates add. */
    public Measured minus(Measured other) {
        return new Measured(value - other.value, errorEstimate + other.errorEstimate);
    }

    /** The figure times a factor. */
    public Measured times(double factor) {
        return new Measured(value * factor, errorEstimate * Math.abs(factor));
    }
}
