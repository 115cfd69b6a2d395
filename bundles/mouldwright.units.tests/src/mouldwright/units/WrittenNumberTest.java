package mouldwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Leans on the language's rule for numbers. */
class WrittenNumberTest {

    @ParameterizedTest
    @CsvSource({ "600, 600", "1.5, 1.5", ".5, .5", "2., 2", "1e3, 1000", "1.5E-3, 0.0015", "-4, -4", "+4, 4", "007, 7",
            "0, 0", "0.000, 0" })
    void aNumberIsReadWithItsExponent(String written, double value) {
        assertThat(WrittenNumber.parse(written)).isEqualTo(new WrittenNumber.Value(value, false, written));
    }

    @Test
    void aDecimalCommaIsReadAndReported() {
        assertThat(WrittenNumber.parse("1,5e-3")).isEqualTo(new WrittenNumber.Value(0.0015, true, "1.5e-3"));
    }

    @ParameterizedTest
    @ValueSource(strings = { "", ".", ",", "-", "1e", "1.2.3", "1,2,3", "1.000,5", "0x10", "NaN", "Infinity", "1 000", "1d", "1f",
            "\u0661" })
    void whatIsNoNumberIsRefused(String written) {
        assertThat(WrittenNumber.parse(written)).isInstanceOf(WrittenNumber.Rejected.class);
    }

    @Test
    void aNumberTooLargeIsRefused() {
        assertThat(WrittenNumber.parse("1e309"))
                .isEqualTo(new WrittenNumber.Rejected("1e309 is too large to work with"));
    }

    @Test
    void aNumberThatWouldSilentlyBecomeNothingIsRefused() {
        assertThat(WrittenNumber.parse("1e-400"))
                .isEqualTo(new WrittenNumber.Rejected("1e-400 is too small to work with"));
    }
}
