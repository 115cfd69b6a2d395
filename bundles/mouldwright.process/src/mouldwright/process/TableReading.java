package mouldwright.process;

/**
 * A figure read from a table.
 *
 * @param value   the figure
 * @param outside whether the place asked for lies outside the table, so that the nearest edge was taken instead
 */
public record TableReading(double value, boolean outside) { }
