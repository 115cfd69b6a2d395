package mouldwright.plan;

import mouldwright.units.Dimension;

/** A listed figure of a plan.
 *  @param id         stable, such as {@code fill.mass}
 *  @param stage      the stage that reckoned it
 *  @param label      in words
 *  @param dimension  its dimension
 *  @param low        SI
 *  @param value      likely value, SI
 *  @param high       SI
 *  @param currency   of an amount of money, such as EUR; empty for any other figure */
public record Quantity(String id, String stage, String label, Dimension dimension, double low, double value,
        double high, String currency) {

    /** A figure that is no money. */
    public Quantity(String id, String stage, String label, Dimension dimension, double low, double value, double high) {
        this(id, stage, label, dimension, low, value, high, "");
    }

    private static final double SECONDS_PER_MINUTE = 60;

    /** @return UCUM code of the unit in which the figure is published: SI, but minutes for times; of money its currency */
    public String ucum() {
        if (!currency.isEmpty())
            return currency;
        return dimension.equals(Dimension.TIME) ? "min" : dimension.ucum();
    }

    /** A figure of this quantity in the unit in which it is published.
     *  @param si such as {@link #value()} */
    public double published(double si) {
        return dimension.equals(Dimension.TIME) ? si / SECONDS_PER_MINUTE : si;
    }
}
