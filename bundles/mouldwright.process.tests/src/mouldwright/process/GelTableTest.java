package mouldwright.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class GelTableTest {

    private static GelTable.Row row(double temperature, double percent, double minutes) {
        return new GelTable.Row(temperature, percent / 100, minutes * 60);
    }

    /** The language's example resin. */
    private static final GelTable RESIN = new GelTable(List.of(row(15, 1, 55), row(15, 2, 30), row(20, 1, 35), row(20, 2, 18),
            row(25, 1, 24), row(25, 2, 12)));

    @ParameterizedTest
    @CsvSource({ "15, 1, 55", "15, 2, 30", "20, 1, 35", "20, 2, 18", "25, 1, 24", "25, 2, 12" })
    void theTableIsReadAtItsRows(double temperature, double percent, double minutes) {
        TableReading reading = RESIN.gelTime(temperature, percent / 100);

        assertThat(reading.value() / 60).isCloseTo(minutes, within(1e-9));
        assertThat(reading.outside()).isFalse();
    }

    @Test
    void halfwayInLogOfCatalystIsTheGeometricMean() { // closed form: ln(gel) straight in ln(c)
        assertThat(RESIN.gelTime(20, 0.01 * Math.sqrt(2)).value() / 60).isCloseTo(Math.sqrt(35 * 18), within(1e-9));
    }

    @Test
    void halfwayInTemperatureIsTheGeometricMean() { // closed form: ln(gel) straight in T
        assertThat(RESIN.gelTime(17.5, 0.02).value() / 60).isCloseTo(Math.sqrt(30 * 18), within(1e-9));
    }

    @Test
    void aFullGridIsReadBilinearlyOnLogarithms() { // closed form, weights of the four corners
        double u = (23 - 20) / 5.0;
        double v = Math.log(1.3) / Math.log(2);
        double expected = Math.exp((1 - u) * ((1 - v) * Math.log(35) + v * Math.log(18))
                + u * ((1 - v) * Math.log(24) + v * Math.log(12)));

        assertThat(RESIN.gelTime(23, 0.013).value() / 60).isCloseTo(expected, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({ "14, 1, 55", "26, 2, 12", "20, 0.5, 35", "20, 3, 18", "5, 4, 30" })
    void outsideTheTableItsEdgeHoldsAndSaysSo(double temperature, double percent, double minutes) {
        TableReading reading = RESIN.gelTime(temperature, percent / 100);

        assertThat(reading.value() / 60).isCloseTo(minutes, within(1e-9));
        assertThat(reading.outside()).isTrue();
    }

    @Test
    void scatteredRowsAreReadAlongTheirOwnTemperatures() { // closed form
        GelTable scattered = new GelTable(List.of(row(15, 1, 60), row(15, 3, 20), row(25, 1.5, 20), row(25, 2, 15)));
        double cold = Math.exp(Math.log(60) + Math.log(1.8) / Math.log(3) * Math.log(20.0 / 60));
        double warm = Math.exp(Math.log(20) + Math.log(1.8 / 1.5) / Math.log(2 / 1.5) * Math.log(15.0 / 20));

        TableReading reading = scattered.gelTime(20, 0.018);

        assertThat(reading.value() / 60).isCloseTo(Math.sqrt(cold * warm), within(1e-9));
        assertThat(reading.outside()).isFalse();
        assertThat(scattered.gelTime(20, 0.028).outside()).isTrue();
    }

    @Property(tries = 200)
    void moreCatalystAndMoreHeatNeverGelLater(@ForAll @DoubleRange(min = 10, max = 29) double temperature,
            @ForAll @DoubleRange(min = 0.005, max = 0.03) @Scale(6) double catalyst) { // shape: rule of thumb, rate rises with both
        double gel = RESIN.gelTime(temperature, catalyst).value();

        assertThat(RESIN.gelTime(temperature + 1, catalyst).value()).isLessThanOrEqualTo(gel * (1 + 1e-12));
        assertThat(RESIN.gelTime(temperature, catalyst * 1.1).value()).isLessThanOrEqualTo(gel * (1 + 1e-12));
    }

    @Test
    void aChartWhereTheColdGelsFirstIsOdd() {
        // BoatCraft gel coat guide 2025, 10 ml/l: 25 degC 30 min, 20 degC 2 h, 15 degC 4 h; here with two rows exchanged
        GelTable exchanged = new GelTable(List.of(row(25, 1, 120), row(20, 1, 30), row(15, 1, 240)));

        assertThat(exchanged.oddities()).containsExactly(List.of(row(20, 1, 30), row(25, 1, 120)));
    }

    @Test
    void aPublishedChartIsNotOdd() { // BoatCraft gel coat guide 2025
        assertThat(new GelTable(List.of(row(25, 1, 30), row(20, 1, 120), row(15, 1, 240), row(20, 1.5, 30), row(15, 1.5, 120)))
                .oddities()).isEmpty();
    }

    @Test
    void twoRowsAtOnePlaceAreRefused() {
        List<GelTable.Row> rows = List.of(row(20, 1, 35), row(20, 1, 30));

        assertThat(GelTable.fault(rows)).contains("20.0 degC");
        assertThatThrownBy(() -> new GelTable(rows)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void anEmptyTableIsRefused() {
        assertThatThrownBy(() -> new GelTable(List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theTableTellsItsTemperatures() {
        assertThat(RESIN.temperatures()).isEqualTo(new Range(15, 20, 25));
    }

    @Test
    void theCatalystIsChosenForTheGelTimeAskedFor() { // closed form on the 20 degC line
        CatalystChoice choice = CatalystChoice.of(RESIN, 25 * 60, 20, 0.01, 0.025);

        assertThat(choice.catalyst()).isCloseTo(0.01 * Math.pow(2, Math.log(25 / 35.0) / Math.log(18 / 35.0)), within(1e-12));
        assertThat(choice.gelTime() / 60).isCloseTo(25, within(1e-9));
        assertThat(choice.bound()).isEqualTo(CatalystChoice.Bound.MET);
        assertThat(choice.outsideTable()).isFalse();
    }

    @Test
    void theChoiceFollowsEachStretchOfTheTable() { // closed form on the stretch from 1.5 to 2 %
        GelTable bent = new GelTable(List.of(row(20, 1, 40), row(20, 1.5, 20), row(20, 2, 18)));

        double catalyst = CatalystChoice.of(bent, 19 * 60, 20, 0.01, 0.02).catalyst();

        assertThat(catalyst).isCloseTo(0.015 * Math.pow(2 / 1.5, Math.log(19 / 20.0) / Math.log(18 / 20.0)), within(1e-12));
    }

    @Test
    void freezingPointIsTheSameFromAboveAndBelow() {
        GelTable table = new GelTable(List.of(row(-0.0, 1, 90)));

        assertThat(table.gelTime(0.0, 0.01)).isEqualTo(table.gelTime(-0.0, 0.01)).matches(reading -> !reading.outside());
    }

    @Property(tries = 200)
    void aGelTimeWithinReachIsMet(@ForAll @DoubleRange(min = 15, max = 25) double temperature,
            @ForAll @DoubleRange(min = 0.0101, max = 0.0199) @Scale(6) double catalyst) { // closed form: the way back
        double wanted = RESIN.gelTime(temperature, catalyst).value();

        CatalystChoice choice = CatalystChoice.of(RESIN, wanted, temperature, 0.01, 0.02);

        assertThat(choice.bound()).isEqualTo(CatalystChoice.Bound.MET);
        assertThat(choice.catalyst()).isCloseTo(catalyst, within(1e-9));
    }

    @Test
    void aHotShopIsHeldAtTheLeastCatalyst() {
        CatalystChoice choice = CatalystChoice.of(RESIN, 40 * 60, 25, 0.01, 0.025);

        assertThat(choice.catalyst()).isEqualTo(0.01);
        assertThat(choice.gelTime() / 60).isCloseTo(24, within(1e-9));
        assertThat(choice.bound()).isEqualTo(CatalystChoice.Bound.LEAST);
    }

    @Test
    void aColdShopIsHeldAtTheMostCatalyst() {
        CatalystChoice choice = CatalystChoice.of(RESIN, 25 * 60, 15, 0.01, 0.02);

        assertThat(choice.catalyst()).isEqualTo(0.02);
        assertThat(choice.bound()).isEqualTo(CatalystChoice.Bound.MOST);
    }

    @Test
    void limitsWiderThanTheTableStopAtTheTable() {
        CatalystChoice choice = CatalystChoice.of(RESIN, 25 * 60, 15, 0.01, 0.025);

        assertThat(choice.catalyst()).isEqualTo(0.02);
        assertThat(choice.bound()).isEqualTo(CatalystChoice.Bound.TABLE);
    }

    @Test
    void limitsBesideTheTableTakeTheNearestAndSaySo() {
        CatalystChoice choice = CatalystChoice.of(RESIN, 10 * 60, 20, 0.03, 0.04);

        assertThat(choice.catalyst()).isEqualTo(0.03);
        assertThat(choice.outsideTable()).isTrue();
    }

    @Test
    void aShopColderThanTheTableSaysSo() {
        assertThat(CatalystChoice.of(RESIN, 40 * 60, 12, 0.01, 0.02).outsideTable()).isTrue();
    }
}
