package mouldwright.process;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The catalyst level for a wanted gel time.
 *
 * @param catalyst     share of the resin's mass
 * @param gelTime      what it gels in, s
 * @param bound        whether the wish could be met, and if not which limit stopped it
 * @param outsideTable whether the gel time had to be taken from the edge of the table
 */
public record CatalystChoice(double catalyst, double gelTime, Bound bound, boolean outsideTable) {

    /** What kept the wish from being met. */
    public enum Bound {
        /** Nothing: the gel time is the wanted one. */
        MET,
        /** Even the least catalyst gels sooner: work faster, in smaller pots, or cooler. */
        LEAST,
        /** Even the most catalyst gels later: warm the shop or wait longer. */
        MOST,
        /** The resin's limits go further than its gel table, whose last level was taken: look at the supplier's sheet. */
        TABLE
    }

    /**
     * Chooses the catalyst, within the resin's limits and as far as the table goes.
     *
     * @param table       the resin's gel table
     * @param wanted      gel time asked for, s
     * @param temperature of shop and resin, degC
     * @param least       least catalyst allowed, share of the resin's mass
     * @param most        most catalyst allowed, not below {@code least}
     */
    public static CatalystChoice of(GelTable table, double wanted, double temperature, double least, double most) {
        Require.positive(wanted, "gel time");
        Require.fraction(least, "least catalyst");
        Require.fraction(most, "most catalyst");
        if (least > most) {
            throw new IllegalArgumentException("least catalyst above most: " + least + ", " + most);
        }
        List<Double> levels = levels(table, temperature, least, most);
        double first = levels.getFirst();
        double last = levels.getLast();
        if (wanted >= table.gelTime(temperature, first).value()) {
            return at(table, temperature, first, wanted, first > least ? Bound.TABLE : Bound.LEAST);
        }
        if (wanted <= table.gelTime(temperature, last).value()) {
            return at(table, temperature, last, wanted, last < most ? Bound.TABLE : Bound.MOST);
        }
        for (int i = 1; i < levels.size(); i++) {
            double before = table.gelTime(temperature, levels.get(i - 1)).value();
            double after = table.gelTime(temperature, levels.get(i)).value();
            if (wanted <= before && wanted >= after) {
                double share = Math.log(wanted / before) / Math.log(after / before);
                double catalyst = levels.get(i - 1) * Math.pow(levels.get(i) / levels.get(i - 1), share);
                return at(table, temperature, Math.clamp(catalyst, levels.get(i - 1), levels.get(i)), wanted, Bound.MET);
            }
        }
        throw new IllegalStateException("a gel time between those of two levels lies between two neighbours");
    }

    /** The levels to look between: the limits, brought inside the table where they overlap it, and what it states within them. */
    private static List<Double> levels(GelTable table, double temperature, double least, double most) {
        TreeSet<Double> stated = table.levelsNear(temperature);
        double from = Math.clamp(stated.first(), least, most);
        double to = Math.clamp(stated.last(), least, most);
        List<Double> levels = new ArrayList<>();
        levels.add(from);
        levels.addAll(stated.subSet(from, false, to, false));
        if (to > from) {
            levels.add(to);
        }
        return levels;
    }

    private static CatalystChoice at(GelTable table, double temperature, double catalyst, double wanted, Bound bound) {
        TableReading reading = table.gelTime(temperature, catalyst);
        boolean met = Math.abs(reading.value() - wanted) <= 1e-9 * wanted;
        return new CatalystChoice(catalyst, reading.value(), met ? Bound.MET : bound, reading.outside());
    }
}
