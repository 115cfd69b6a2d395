package mouldwright.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CureTest {

    @Test
    void threeKilosAtFourteenDegreesTakesNinetyMillilitres() {
        // East Coast Fibreglass, catalyst addition chart, which counts 1 g as 1 ml
        double catalyst = Cure.guide(14).getAsDouble();

        assertThat(Cure.catalystVolume(3, catalyst, Cure.CHART_CATALYST_DENSITY) * 1e6).isCloseTo(90, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({ "0.5, 1, 5", "0.5, 2, 10", "0.5, 3, 15", "0.5, 4, 20", "10, 1, 100", "10, 4, 400", "1, 1, 10" })
    void theChartIsTenMillilitresToTheKiloForEachPercent(double resin, double percent, double millilitres) {
        // East Coast Fibreglass, catalyst addition chart
        assertThat(Cure.catalystVolume(resin, percent / 100, Cure.CHART_CATALYST_DENSITY) * 1e6)
                .isCloseTo(millilitres, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({ "5, 0.04", "12.9, 0.04", "13, 0.03", "16, 0.02", "19.9, 0.02", "20, 0.01", "35, 0.01" })
    void aColdShopTakesMoreCatalyst(double temperature, double catalyst) { // East Coast Fibreglass, catalyst addition chart
        assertThat(Cure.guide(temperature)).hasValue(catalyst);
    }

    @ParameterizedTest
    @ValueSource(doubles = { 4.9, 35.1, -10 })
    void theChartSaysNothingBeyondItsTemperatures(double temperature) { // East Coast Fibreglass, catalyst addition chart
        assertThat(Cure.guide(temperature)).isEmpty();
    }

    @Test
    void catalystIsHeavierThanWater() { // ml = g / 1.16, density from memory
        assertThat(Cure.catalystVolume(3, 0.03, Cure.CATALYST_DENSITY) * 1e6).isCloseTo(90 / 1.16, within(1e-9));
    }

    @Test
    void workingTimeIsSevenTenthsOfTheGelTime() { // common practice
        assertThat(Cure.workingTime(1500)).isCloseTo(1050, within(1e-9));
    }

    @Test
    void twoPeopleLayTheirPotWithinTheWorkingTime() { // closed form: 4 m2/h x 2 x 1.125 kg/m2 x 17.5 min = 2.625 kg
        assertThat(Cure.largestPot(4 / 3600.0, 2, 1.125, 1500, 10)).isCloseTo(2.625, within(1e-12));
    }

    @Test
    void thePotLimitHoldsWhereHandsWouldDoMore() {
        assertThat(Cure.largestPot(4 / 3600.0, 2, 1.125, 1500, 2)).isEqualTo(2);
        assertThat(Cure.pots(5, 4 / 3600.0, 2, 1.125, 1500, 2).potLimit()).isTrue();
    }

    @Test
    void theFirstPotIsHalfAPot() { // common practice: start small until the cure is known; 1 + 2 + 2 + rest
        Cure.Pots pots = Cure.pots(6, 4 / 3600.0, 2, 1.125, 1500, 2);

        assertThat(pots).isEqualTo(new Cure.Pots(1, 2, 4, true));
    }

    @Test
    void fullPotsAfterTheFirstAreNotRoundedUp() { // closed form: 1 + 2 + 2 kg
        assertThat(Cure.pots(5, 4 / 3600.0, 2, 1.125, 1500, 2).count()).isEqualTo(3);
    }

    @Test
    void aLittleResinIsOnePot() {
        assertThat(Cure.pots(0.4, 4 / 3600.0, 2, 1.125, 1500, 2)).isEqualTo(new Cure.Pots(0.4, 2, 1, true));
    }

    @ParameterizedTest
    @CsvSource({ "0.07, 2.390", "0.08, 2.741" })
    void neatResinShrinksByAThirdOfItsVolumeShrinkage(double volume, double percent) {
        // General-purpose resin data sheet (IS 6746-1994): 7 to 8 % in volume; linear computed
        assertThat(Cure.linearShrinkage(volume) * 100).isCloseTo(percent, within(6e-4));
    }

    @Test
    void aPlugForThreeTenthsOfAPercentIsThreeThousandthsLarger() { // closed form
        assertThat(Cure.plugScale(0.003)).isCloseTo(1.003009, within(5e-7));
        assertThat(Cure.plugScale(0)).isEqualTo(1);
    }
}
