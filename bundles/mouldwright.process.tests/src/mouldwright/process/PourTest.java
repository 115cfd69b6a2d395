package mouldwright.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PourTest {

    @ParameterizedTest
    @CsvSource({ "0.19, 0.2, 1", "0.2, 0.2, 1", "0.201, 0.2, 2", "0.6, 0.2, 3", "0.9, 0.3, 3", "1.2, 0.2, 6", "0.7, 0.1, 7" })
    void liftsAreAsManyAsTheRisenHeightAllows(double height, double limit, int lifts) { // closed form
        assertThat(Pour.lifts(height, limit)).isEqualTo(lifts);
    }

    @Test
    void aKiloIsMixedAndPouredInTwentyFourSeconds() { // Boatcraft, Pouring foam introduction: mix 20 s; rate assumed
        assertThat(Pour.timeFor(1)).isCloseTo(24, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({ "36, 10, 4", "36, 1, 1", "32, 10, 3", "40, 10, 5" })
    void aPotIsPouredOutBeforeItCreams(double cream, double limit, double pot) {
        // Boatcraft, Pouring foam introduction: cream 36 +- 4 s, mix 20 s; 0.25 kg/s assumed
        assertThat(Pour.largestPot(cream, limit)).isCloseTo(pot, within(1e-12));
        assertThat(Pour.timeFor(Pour.largestPot(cream, limit))).isLessThanOrEqualTo(cream);
    }

    @Test
    void foamThatCreamsWhileItIsMixedCannotBePouredByHand() {
        assertThat(Pour.largestPot(18, 1)).isZero();
    }

    @Test
    void potsAreCountedOnTheLift() { // closed form
        assertThat(Pour.pots(3.4, 1)).isEqualTo(4);
        assertThat(Pour.pots(3, 1)).isEqualTo(3);
    }

    @Test
    void thereIsNoCountOfPotsThatHoldNothing() {
        assertThatThrownBy(() -> Pour.pots(3, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({ "0.110, 0.7", "0.200, 2.3", "0.300, 5.1" })
    void thickFoamKeepsItsHeatForHours(double thickness, double hours) { // slab conduction, textbook; diffusivity assumed
        assertThat(Pour.coolingTime(thickness) / 3600).isCloseTo(hours, within(0.05));
    }

    @Test
    void thinFoamWaitsForItsFirmTime() { // CFS, How to use 2 part PU foam: cured after about 30 min
        assertThat(Pour.waitBetweenLifts(1800, 0.050)).isEqualTo(1800);
    }

    @Test
    void thickFoamWaitsForItsHeat() { // closed form
        assertThat(Pour.waitBetweenLifts(1800, 0.200)).isEqualTo(0.04 / (Math.PI * Math.PI * 5e-7), within(1e-9));
    }
}
