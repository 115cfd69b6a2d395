package mouldwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;

import org.junit.jupiter.api.Test;

/** Closed forms throughout. */
class AmountTest {

    private static Amount of(double value, String unit) {
        return Amount.of(value, Units.find(unit).orElseThrow());
    }

    @Test
    void feetAndInchesAreASum() {
        assertThat(of(3, "ft").plus(of(4, "in")).si()).isCloseTo(1.016, within(1e-15));
    }

    @Test
    void twiceAWallOnSixtyMillimetresIsALength() {
        Amount sum = of(60, "mm").plus(Amount.plain(2).times(of(3, "mm")));

        assertThat(sum.dimension()).isEqualTo(Dimension.LENGTH);
        assertThat(sum.si()).isCloseTo(0.066, within(1e-15));
    }

    @Test
    void aMassOverAnAreaIsAMatWeight() {
        assertThat(of(9, "kg").over(of(20, "m2"))).isEqualTo(of(450, "g/m2"));
    }

    @Test
    void aLengthLessAMassIsAMismatchOfBoth() {
        DimensionMismatch mismatch = catchThrowableOfType(DimensionMismatch.class, () -> of(1, "m").minus(of(1, "kg")));

        assertThat(mismatch.left()).isEqualTo(Dimension.LENGTH);
        assertThat(mismatch.right()).isEqualTo(Dimension.MASS);
        assertThat(mismatch).hasMessage("a length and a mass do not go together");
    }

    @Test
    void theSmallerOfALengthAndANumberIsAMismatch() {
        assertThatThrownBy(() -> of(1, "m").min(Amount.plain(2))).isInstanceOf(DimensionMismatch.class);
    }

    @Test
    void theSmallerAndTheLargerAreCompared() {
        assertThat(of(1, "in").min(of(25, "mm"))).isEqualTo(of(25, "mm"));
        assertThat(of(1, "in").max(of(25, "mm"))).isEqualTo(of(1, "in"));
    }

    @Test
    void aDivisionByZeroIsRefused() {
        assertThatThrownBy(() -> of(1, "m").over(Amount.plain(0))).isInstanceOf(NotANumber.class)
                .hasMessage("division by zero");
    }

    @Test
    void anOverflowIsRefusedWhereverItArises() {
        Amount huge = Amount.plain(1e308);

        assertThatThrownBy(() -> huge.times(Amount.plain(1000))).isInstanceOf(NotANumber.class);
        assertThatThrownBy(() -> huge.plus(huge)).isInstanceOf(NotANumber.class);
        assertThatThrownBy(() -> huge.negate().minus(huge)).isInstanceOf(NotANumber.class);
        assertThatThrownBy(() -> huge.over(Amount.plain(1e-10))).isInstanceOf(NotANumber.class);
        assertThatThrownBy(() -> of(1e308, "week")).isInstanceOf(NotANumber.class);
    }

    @Test
    void whatIsNoNumberIsNoAmount() {
        for (double bad : List.of(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY)) {
            assertThatThrownBy(() -> new Amount(bad, Dimension.LENGTH)).isInstanceOf(NotANumber.class);
        }
    }

    @Test
    void minusNothingIsNothing() {
        assertThat(Amount.plain(0).negate()).isEqualTo(Amount.plain(0));
    }

    @Test
    void temperaturesAreComparedButNotReckonedWith() {
        Amount shop = of(20, "degC");

        assertThat(shop.max(of(59, "degF"))).isEqualTo(shop);
        assertThatThrownBy(() -> shop.plus(of(5, "K"))).isInstanceOf(NotANumber.class);
        assertThatThrownBy(() -> Amount.plain(2).times(shop)).isInstanceOf(NotANumber.class);
        assertThatThrownBy(() -> of(5, "degF").negate()).isInstanceOf(NotANumber.class)
                .hasMessage("a temperature is a reading and cannot be negated");
    }

    @Test
    void anAngleIsNoShare() {
        assertThatThrownBy(() -> of(2, "deg").plus(of(2, "%"))).isInstanceOf(DimensionMismatch.class);
    }
}
