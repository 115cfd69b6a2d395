package mouldwright.geometry.loft;

/** A sum by two quadrature orders.
 *
 *  @param high by the higher order, the figure to use
 *  @param low  by the lower one, to see how well the figure is known */
public record TwoOrders(double high, double low) {
    /** Nothing. */
    public static final TwoOrders ZERO = new TwoOrders(0, 0);

    /** The sum of both. */
    public TwoOrders plus(TwoOrders other) {
        return new TwoOrders(high + other.high, low + other.low);
    }
}
