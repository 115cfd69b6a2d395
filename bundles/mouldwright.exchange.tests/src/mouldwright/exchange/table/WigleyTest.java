package mouldwright.exchange.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mouldwright.exchange.SectionPoint;
import mouldwright.exchange.StationOffsets;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.LoftStation;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.measure.Measures;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.Section;
import mouldwright.geometry.section.SectionForm;
import mouldwright.geometry.section.SectionKind;
import mouldwright.geometry.section.SectionRules;
import org.junit.jupiter.api.Test;

/** The parabolic hull of Wigley, y = B/2 (1 - (2x/L)^2) (1 - (z/T)^2) with z down from the waterline: a formula published for hull resistance
 *  (ITTC 1984) and known to every yard office. It is written as a table of offsets, rounded to tenths or hundredths of a millimetre, read and lofted. */
class WigleyTest {

    private static final double LENGTH = 2, BREADTH = 0.2, DRAUGHT = 0.125;
    private static final double[] BUTTOCKS = {0.02, 0.04, 0.06, 0.08};

    /** Half-breadth at x aft of the stem and z above the keel. */
    private static double halfBreadth(double x, double z) {
        double along = 2 * x / LENGTH - 1, down = 1 - z / DRAUGHT;
        return BREADTH / 2 * (1 - along * along) * (1 - down * down);
    }

    /** How far a place of a section lies from the formula's, square to its outline. */
    private static double off(double x, double y, double z) {
        double slope = (halfBreadth(x, z + 1e-6) - halfBreadth(x, z - 1e-6)) / 2e-6;
        return Math.abs(y - halfBreadth(x, z)) / Math.hypot(1, slope);
    }

    private static String table(int decimals, double... buttocks) {
        StringBuilder rows = new StringBuilder("offsets in mm");
        List<Double> stations = new ArrayList<>();
        for (int i = 0; i <= 20; i++)
            stations.add(LENGTH * i / 20);
        stations.forEach(x -> rows.append(",S").append(Math.round(x * 1000)));
        row(rows, decimals, "position", stations.stream().map(x -> x * 1000).toList());
        rows.append("\nHeights");
        row(rows, decimals, "keel", stations.stream().map(x -> 0.0).toList());
        for (double out : buttocks)
            row(rows, decimals, "buttock " + Math.round(out * 1000), stations.stream().map(x -> {
                double most = halfBreadth(x, DRAUGHT);
                return most <= out ? Double.NaN : 1000 * DRAUGHT * (1 - Math.sqrt(1 - out / most));
            }).toList());
        row(rows, decimals, "sheer", stations.stream().map(x -> 1000 * DRAUGHT).toList());
        rows.append("\nHalf-breadths");
        for (double z = 0.0125; z < DRAUGHT; z += 0.0125) {
            double height = z;
            row(rows, decimals, "WL " + height * 1000, stations.stream().map(x -> 1000 * halfBreadth(x, height)).toList());
        }
        row(rows, decimals, "deck", stations.stream().map(x -> 1000 * halfBreadth(x, DRAUGHT)).toList());
        return rows.append('\n').toString();
    }

    private static void row(StringBuilder rows, int decimals, String label, List<Double> figures) {
        rows.append('\n').append(label);
        figures.forEach(mm -> rows.append(',').append(Double.isNaN(mm) ? "" : String.format(Locale.ROOT, "%." + decimals + "f", mm)));
    }

    private static List<StationOffsets> read(int decimals, double... buttocks) {
        TableResult result = Tables.read(table(decimals, buttocks), Optional.empty());
        assertThat(result.faults()).isEmpty();
        return result.table().orElseThrow().stations();
    }

    private static Loft loft(double... buttocks) {
        List<LoftStation> stations = read(2, buttocks).stream().map(station -> new LoftStation(station.x().orElseThrow(), Section.of(
                new SectionForm.Points(station.points().stream().map(p -> new OutlinePoint(p.y(), p.z(), p.knuckle(), 0, p.line(), false)).toList()),
                SectionKind.HALF, SectionRules.LENIENT).section().orElseThrow(), false)).toList();
        return Loft.through(stations).loft().orElseThrow();
    }

    @Test void everyPointReadLiesOnTheFormulaWithinATenthOfAMillimetre() {
        for (StationOffsets station : read(1, BUTTOCKS))
            for (SectionPoint point : station.points()) {
                double x = station.x().orElseThrow();
                assertThat(off(x, point.y(), point.z())).as("%s %s", station.name(), point).isLessThan(1e-4);
            }
    }

    @Test void theLoftBetweenStationsLiesOnTheFormulaWithinATenthOfAMillimetre() {
        assertThat(farthest(loft())).isLessThan(1e-4);
    }

    /** Points on buttocks fall at odd distances between those on waterlines, which a smooth curve through all of them shows. */
    @Test void withButtocksBetweenTheWaterlinesItLiesOnTheFormulaWithinTwoTenths() {
        assertThat(farthest(loft(BUTTOCKS))).isLessThan(2e-4);
    }

    private static double farthest(Loft loft) {
        double most = 0;
        for (int i = 1; i < 80; i++) {
            double x = LENGTH * i / 80;
            Slice slice = loft.at(x);
            for (double u = 0; u <= 1; u += 0.05)
                most = Math.max(most, off(x, slice.point(0, u).y(), slice.point(0, u).z()));
        }
        return most;
    }

    /** Block coefficient of the form is 4/9. */
    @Test void theVolumeIsFourNinthsOfTheBlock() {
        double volume = Measures.of(loft(BUTTOCKS), Bare.NONE, () -> false).volume().volume().value();
        assertThat(volume).isCloseTo(4.0 / 9 * LENGTH * BREADTH * DRAUGHT, withinPercentage(0.1));
    }
}
