package mouldwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** Offsets as boatbuilders write them; an inch is 25.4 mm exactly (international yard, 1959). */
class FeetInchesEighthsTest {

    private static String inches(double inches) {
        return FeetInchesEighths.of(inches * 0.0254);
    }

    @Test void twoFeetFiveAndThreeEighths() {
        assertThat(inches(24 + 5 + 3 / 8.0)).isEqualTo("2-5-3");
    }

    @Test void aSixteenthMoreIsAPlus() {
        assertThat(inches(24 + 5 + 7 / 16.0)).isEqualTo("2-5-3+");
    }

    @Test void lengthsAreRoundedToTheNearestSixteenth() {
        assertThat(inches(1 / 33.0)).isEqualTo("0-0-0");
        assertThat(inches(1 / 31.0)).isEqualTo("0-0-0+");
    }

    @Test void elevenAndFifteenSixteenthsAndMoreIsAFoot() {
        assertThat(inches(11 + 31.5 / 32)).isEqualTo("1-0-0");
    }

    @Test void belowTheBaseThereIsAMinus() {
        assertThat(inches(-13)).isEqualTo("-1-1-0");
        assertThat(inches(-0.001)).isEqualTo("0-0-0");
    }

    @Test void whatIsNoLengthIsRefused() {
        assertThatThrownBy(() -> FeetInchesEighths.of(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
