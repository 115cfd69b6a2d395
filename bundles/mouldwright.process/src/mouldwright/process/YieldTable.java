package mouldwright.process;

import java.util.Comparator;
import java.util.List;

/**
 * The share of its nominal expansion a pour foam reaches, by the temperature of shop and liquid: a cold cavity gives
 * less foam. Read by straight lines between the rows; outside the table its nearest row holds, never more than that, and
 * the reading says so. Source: the supplier's sheet, as the library states it.
 *
 * @param rows one for each temperature, in any order, at least one
 */
public record YieldTable(List<Row> rows) {

    /** The spread of what a pour really fills, as shares of the table: common practice, an assumed default. */
    public static final Range PRACTICE = new Range(0.75, 0.90, 1.00);

    /**
     * One row.
     *
     * @param temperature degC
     * @param yield       share of the nominal expansion reached, above 0 and at most 1
     */
    public record Row(double temperature, double yield) {

        /** Refuses a yield that is no share. */
        public Row {
            Require.finite(temperature, "temperature");
            Require.share(yield, "yield");
        }
    }

    /** Sorts the rows; refuses an empty table and one that states a temperature twice. */
    public YieldTable {
        rows = rows.stream().sorted(Comparator.comparingDouble(Row::temperature)).toList();
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("a yield table needs a row");
        }
        for (int i = 1; i < rows.size(); i++) {
            if (rows.get(i).temperature() == rows.get(i - 1).temperature()) {
                throw new IllegalArgumentException("two yields at " + rows.get(i).temperature() + " degC");
            }
        }
    }

    /** The yield at a temperature, degC. */
    public TableReading at(double temperature) {
        Require.finite(temperature, "temperature");
        Row first = rows.getFirst();
        Row last = rows.getLast();
        if (temperature <= first.temperature()) {
            return new TableReading(first.yield(), temperature < first.temperature());
        }
        if (temperature >= last.temperature()) {
            return new TableReading(last.yield(), temperature > last.temperature());
        }
        int above = 1;
        while (rows.get(above).temperature() < temperature) {
            above++;
        }
        Row low = rows.get(above - 1);
        Row high = rows.get(above);
        double share = (temperature - low.temperature()) / (high.temperature() - low.temperature());
        return new TableReading(low.yield() + share * (high.yield() - low.yield()), false);
    }

    /** Low, likely and high yield at a temperature: {@link #PRACTICE} of the table, so never above it. */
    public Range rangeAt(double temperature) {
        return PRACTICE.times(at(temperature).value());
    }
}
