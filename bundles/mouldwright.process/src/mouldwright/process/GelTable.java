package mouldwright.process;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Gel time of a resin by temperature and catalyst.
 *
 * <p>Read on ln(gel): along each stated temperature by straight lines in ln(catalyst), then between the two
 * neighbouring temperatures by a straight line in temperature. On a full grid this is bilinear interpolation in
 * (T, ln c). Source: gel time falls by about the same factor for each further 10 degC (memory) and about inversely with
 * catalyst, which both are straight lines on these scales; the rows are the supplier's.
 *
 * <p>Domain: the stated temperatures, and at each of the two neighbours the stated catalyst levels. Outside it the nearest
 * edge holds and the reading says so; nothing is ever extrapolated. Rows may be scattered: a temperature with one row only is
 * inside at that one catalyst level.
 */
public final class GelTable {

    /**
     * One row.
     *
     * @param temperature degC
     * @param catalyst    share of the resin's mass, 0.02 for 2 %
     * @param gelTime     s
     */
    public record Row(double temperature, double catalyst, double gelTime) {

        /** Refuses figures that cannot be. */
        public Row {
            temperature = Require.finite(temperature, "temperature") + 0.0; // minus nothing is nothing
            Require.fraction(catalyst, "catalyst");
            Require.positive(gelTime, "gel time");
        }
    }

    private final TreeMap<Double, TreeMap<Double, Double>> lines = new TreeMap<>();

    /** Refuses an empty table and one with two rows at one place; {@link #fault} tells beforehand. */
    public GelTable(List<Row> rows) {
        String fault = fault(rows);
        if (!fault.isEmpty()) {
            throw new IllegalArgumentException(fault);
        }
        for (Row row : rows) {
            lines.computeIfAbsent(row.temperature(), t -> new TreeMap<>()).put(row.catalyst(), row.gelTime());
        }
    }

    /** Why rows make no table, in words; empty if they do. */
    public static String fault(List<Row> rows) {
        if (rows.isEmpty()) {
            return "a gel table needs a row";
        }
        record Place(double temperature, double catalyst) { }
        Set<Place> seen = new HashSet<>();
        for (Row row : rows) {
            Place place = new Place(row.temperature(), row.catalyst());
            if (!seen.add(place)) {
                return "two gel times at " + row.temperature() + " degC and " + row.catalyst() * 100 + " %";
            }
        }
        return "";
    }

    /** The rows of which one should gel faster and does not: more catalyst at one temperature, or more heat at one level. */
    public List<List<Row>> oddities() {
        List<Row> rows = rows();
        List<List<Row>> odd = new ArrayList<>();
        for (Row slow : rows) {
            for (Row fast : rows) {
                boolean warmer = fast.temperature() > slow.temperature() && fast.catalyst() == slow.catalyst();
                boolean stronger = fast.temperature() == slow.temperature() && fast.catalyst() > slow.catalyst();
                if ((warmer || stronger) && fast.gelTime() >= slow.gelTime()) {
                    odd.add(List.of(slow, fast));
                }
            }
        }
        return odd;
    }

    /** The rows, coldest first, and at one temperature the least catalyst first. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        lines.forEach((t, line) -> line.forEach((c, gel) -> rows.add(new Row(t, c, gel))));
        return rows;
    }

    /** Lowest and highest temperature of the table, degC; likely is their middle. */
    public Range temperatures() {
        return new Range(lines.firstKey(), (lines.firstKey() + lines.lastKey()) / 2, lines.lastKey());
    }

    /**
     * Gel time.
     *
     * @param temperature degC
     * @param catalyst    share of the resin's mass, above 0 and below 1
     * @return s, and whether it lies outside the table
     */
    public TableReading gelTime(double temperature, double catalyst) {
        Require.finite(temperature, "temperature");
        Require.fraction(catalyst, "catalyst");
        double within = Math.clamp(temperature, lines.firstKey(), lines.lastKey());
        double cold = lines.floorKey(within);
        double warm = lines.ceilingKey(within);
        TableReading atCold = alongLine(lines.get(cold), catalyst);
        if (cold == warm) {
            return new TableReading(Math.exp(atCold.value()), atCold.outside() || within != temperature);
        }
        TableReading atWarm = alongLine(lines.get(warm), catalyst);
        double share = (within - cold) / (warm - cold);
        return new TableReading(Math.exp(atCold.value() + share * (atWarm.value() - atCold.value())),
                atCold.outside() || atWarm.outside());
    }

    /** The catalyst levels stated at the neighbouring temperatures; between two of them ln(gel) is a straight line in ln(c). */
    TreeSet<Double> levelsNear(double temperature) {
        double within = Math.clamp(temperature, lines.firstKey(), lines.lastKey());
        TreeSet<Double> levels = new TreeSet<>(lines.floorEntry(within).getValue().keySet());
        levels.addAll(lines.ceilingEntry(within).getValue().keySet());
        return levels;
    }

    /** ln(gel) along one temperature. */
    private static TableReading alongLine(TreeMap<Double, Double> line, double catalyst) {
        double within = Math.clamp(catalyst, line.firstKey(), line.lastKey());
        double less = line.floorKey(within);
        double more = line.ceilingKey(within);
        double atLess = Math.log(line.get(less));
        if (less == more) {
            return new TableReading(atLess, within != catalyst);
        }
        double share = Math.log(within / less) / Math.log(more / less);
        return new TableReading(atLess + share * (Math.log(line.get(more)) - atLess), within != catalyst);
    }
}
