package mouldwright.geometry.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The rule against the integral of a power, 1 / (n + 1): closed form. */
class LobattoTest {
    private static double integral(int power, boolean high) {
        double sum = 0;
        for (int i = 0; i < Lobatto.SIZE; i++)
            sum += (high ? Lobatto.high(i) : Lobatto.low(i)) * Math.pow(Lobatto.node(i), power);
        return sum;
    }

    @ParameterizedTest
    @ValueSource(ints = { 0, 1, 2, 3, 4, 5 })
    void bothOrdersAreExactUpToTheFifthPower(int power) {
        assertThat(integral(power, true)).isCloseTo(1.0 / (power + 1), within(1e-14));
        assertThat(integral(power, false)).isCloseTo(1.0 / (power + 1), within(1e-14));
    }

    @ParameterizedTest
    @ValueSource(ints = { 6, 7, 8, 9 })
    void onlyTheHigherOneIsExactUpToTheNinth(int power) {
        assertThat(integral(power, true)).isCloseTo(1.0 / (power + 1), within(1e-14));
        assertThat(Math.abs(integral(power, false) * (power + 1) - 1)).isGreaterThan(1e-3);
    }
}
