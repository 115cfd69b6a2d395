package mouldwright.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import mouldwright.process.MixRatio.Basis;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class FoamTest {

    private static final YieldTable TABLE = new YieldTable(List.of(new YieldTable.Row(20, 0.90),
            new YieldTable.Row(15, 0.80), new YieldTable.Row(25, 0.95)));

    @Test
    void aKiloThatCarriesTwentySevenKilosInWaterFillsTwentyEightLitres() {
        // CFS, Pouring polyurethane liquid foam: "1 kg supports about 27 kg"; 1000 V - 1 = 27 gives 35.71 kg/m3
        assertThat(Foam.mass(0.028, 35.714286, 1)).isCloseTo(1, within(1e-7));
    }

    @Test
    void anXPoundFoamGivesACubicFootFromXPounds() {
        // definition of yield, polyblog.poly-mor.ca 2017/04/08; 2 lb/ft3 = 32.037 kg/m3, 1 ft3 = 0.0283168 m3
        assertThat(Foam.mass(0.028316847, 32.036925, 1)).isCloseTo(2 * 0.45359237, within(1e-7));
    }

    @Test
    void aCoolShopTakesMoreFoamForTheSameCavity() { // mass balance
        assertThat(Foam.mass(0.1, 36, 0.8)).isCloseTo(4.5, within(1e-12));
        assertThat(Foam.densityInPlace(36, 0.8)).isCloseTo(45, within(1e-12));
    }

    @Test
    void liquidIsAThirtiethOfTheCavity() { // common practice: foam grows to about 30 times its liquid
        assertThat(Foam.liquidByExpansion(0.3, 30, 1)).isCloseTo(0.010, within(1e-15));
    }

    @Test
    void plannedSprayYieldIsSixtyPercentOfTheory() {
        // D. B. South, Understanding polyurethane foam: theory 6 board feet to the pound, plan 3.5 to 3.8
        // board feet to the pound of a 2 lb/ft3 foam; a board foot is a twelfth of a cubic foot
        assertThat(Foam.yieldOf(1 / 3.5, 1 / 12.0, 2)).isCloseTo(.583, within(5e-4));
        assertThat(Foam.yieldOf(1 / 3.8, 1 / 12.0, 2)).isCloseTo(.633, within(5e-4));
    }

    @Test
    void aRecordedPourNeverCountsAsMoreThanFullYield() {
        assertThat(Foam.yieldOf(1, 0.05, 36)).isEqualTo(1); // library rule: never lighter than free rise
    }

    @ParameterizedTest
    @CsvSource({ "15, .80", "20, .90", "25, .95", "17.5, .85", "22, .92" })
    void yieldIsReadBetweenTheRows(double temperature, double yield) { // closed form
        TableReading reading = TABLE.at(temperature);

        assertThat(reading.value()).isCloseTo(yield, within(1e-12));
        assertThat(reading.outside()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({ "10, .80", "14.9, .80", "25.1, .95", "40, .95" })
    void outsideTheTableItsEdgeHoldsAndSaysSo(double temperature, double yield) {
        assertThat(TABLE.at(temperature)).isEqualTo(new TableReading(yield, true));
    }

    @Property(tries = 100)
    void yieldIsNeverAboveTheTable(@ForAll @DoubleRange(min = -20, max = 60) double temperature) {
        assertThat(TABLE.rangeAt(temperature).high()).isLessThanOrEqualTo(0.95).isEqualTo(TABLE.at(temperature).value());
    }

    @Test
    void aPourReachesThreeQuartersToAllOfItsYield() { // common practice, assumed default
        Range range = TABLE.rangeAt(20);

        assertThat(range.low()).isCloseTo(0.675, within(1e-12));
        assertThat(range.likely()).isCloseTo(0.81, within(1e-12));
        assertThat(range.high()).isCloseTo(0.90, within(1e-12));
    }

    @Test
    void aTableThatSaysTwoThingsAtOneTemperatureIsRefused() {
        assertThatThrownBy(() -> new YieldTable(List.of(new YieldTable.Row(20, 0.9), new YieldTable.Row(20, 0.8))))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("20");
    }

    @ParameterizedTest
    @ValueSource(doubles = { 0, -0.1, 1.2, 90, Double.NaN })
    void aYieldThatIsNoShareIsRefused(double yield) {
        assertThatThrownBy(() -> Foam.mass(0.1, 36, yield)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void equalVolumesWeighTheMeanOfTheirDensities() { // mass balance
        MixRatio ratio = new MixRatio(100, 100, Basis.VOLUME);

        assertThat(ratio.mixedDensity(new MixRatio.Densities(1120, 1220))).isCloseTo(1170, within(1e-9));
    }

    @Test
    void equalWeightsTakeTheHarmonicMean() { // (a + b)/(a/rA + b/rB)
        MixRatio ratio = new MixRatio(100, 100, Basis.WEIGHT);

        assertThat(ratio.mixedDensity(new MixRatio.Densities(1120, 1220)))
                .isCloseTo(2 / (1 / 1120.0 + 1 / 1220.0), within(1e-9));
    }

    @Test
    void aVolumeRatioIsToldOffByScaleAndByMeasure() { // mass balance
        MixRatio.Parts parts = new MixRatio(100, 100, Basis.VOLUME)
                .split(2.34, Optional.of(new MixRatio.Densities(1120, 1220)));

        assertThat(parts.massA()).isCloseTo(1.12, within(1e-12));
        assertThat(parts.massB()).isCloseTo(1.22, within(1e-12));
        assertThat(parts.volumeA().getAsDouble()).isCloseTo(0.001, within(1e-15));
        assertThat(parts.volumeB().getAsDouble()).isCloseTo(0.001, within(1e-15));
        assertThat(parts.assumedEqually()).isFalse();
    }

    @Test
    void aWeightRatioNeedsNoDensities() { // mass balance
        MixRatio.Parts parts = new MixRatio(100, 120, Basis.WEIGHT).split(2.2, Optional.empty());

        assertThat(parts.massA()).isCloseTo(1, within(1e-12));
        assertThat(parts.massB()).isCloseTo(1.2, within(1e-12));
        assertThat(parts.volumeA()).isEmpty();
        assertThat(parts.assumedEqually()).isFalse();
    }

    @Test
    void aVolumeRatioWithoutDensitiesSaysWhatItAssumes() {
        assertThat(new MixRatio(1, 1, Basis.VOLUME).split(2, Optional.empty()).assumedEqually()).isTrue();
    }

    @Property(tries = 100)
    void nothingIsLostInTellingOff(@ForAll @DoubleRange(min = 0, max = 50) double mass,
            @ForAll @DoubleRange(min = 1, max = 200) double a, @ForAll @DoubleRange(min = 1, max = 200) double b,
            @ForAll Basis basis) { // mass balance; and the volumes stand in the stated ratio
        MixRatio ratio = new MixRatio(a, b, basis);
        MixRatio.Densities densities = new MixRatio.Densities(1120, 1220);
        MixRatio.Parts parts = ratio.split(mass, Optional.of(densities));

        assertThat(parts.massA() + parts.massB()).isCloseTo(mass, within(1e-12 * mass));
        assertThat(parts.volumeA().getAsDouble() + parts.volumeB().getAsDouble())
                .isCloseTo(Foam.liquidOfMass(mass, ratio.mixedDensity(densities)), within(1e-12 * (1 + mass)));
    }

    @Test
    void componentsAtTheDataSheetDensitiesGrowThirtyTwoAndAHalfTimes() {
        // Polarfoam data sheets (isocyanate 1.22, polyol 1.12); Boatcraft foam of 36 kg/m3: 1.17/36 is 32.5 : 1
        double mixed = new MixRatio(1, 1, Basis.VOLUME).mixedDensity(new MixRatio.Densities(1120, 1220));

        assertThat(mixed / 36).isCloseTo(32.5, within(1e-9));
        assertThat(FoamFigures.of(32.5, 36, OptionalDouble.of(mixed)))
                .matches(f -> !f.disagree() && !f.implausible());
    }

    @Test
    void aPublishedSlipInYieldIsFound() {
        // CFS, How to use 2 part PU foam: "1 kg yields 0.08 m2 (1 cu.ft.)"; taken as 0.08 m3/kg that is 12.5 kg/m3
        FoamFigures slip = FoamFigures.of(30, 12.5, OptionalDouble.of(1170));

        assertThat(slip.disagree()).isTrue();
        assertThat(slip.implausible()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({ "32.5, true", "29.4, true", "35.6, true", "29.0, false", "36.0, false" })
    void expansionMayDifferFromTheDensitiesByATenth(double expansion, boolean agree) { // 1170/36 = 32.5, +-10 %
        assertThat(FoamFigures.of(expansion, 36, OptionalDouble.of(1170)).disagree()).isNotEqualTo(agree);
    }

    @Test
    void withoutDensitiesOnlyTheImpliedLiquidIsJudged() {
        FoamFigures figures = FoamFigures.of(20, 36, OptionalDouble.empty());

        assertThat(figures.deviation()).isEmpty();
        assertThat(figures.disagree()).isFalse();
        assertThat(figures.implausible()).isTrue(); // 720 kg/m3 floats on water; urethane components do not
    }

    @Test
    void overfillIsTheConvexCrownAndFiveMillimetres() { // common practice
        assertThat(Foam.leastOverfill(0.0031)).isCloseTo(0.0081, within(1e-15));
        assertThat(Foam.leastOverfill(-0.004)).isEqualTo(0.005);
    }

    @ParameterizedTest
    @CsvSource({ "0.31, 0.1, true", "0.29, 0.1, false" })
    void anOpeningWiderThanThreeDepthsIsBroadAndShallow(double opening, double depth, boolean broad) { // common practice
        assertThat(Foam.isBroadAndShallow(opening, depth)).isEqualTo(broad);
    }
}
