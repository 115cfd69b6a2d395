package mouldwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Leans on common practice: three figures, in the unit a shop would say the figure in. */
class DisplayTest {

    private static Dimension of(String unit) {
        return Units.find(unit).orElseThrow().dimension();
    }

    @ParameterizedTest
    @CsvSource({ "0.0132, m, 13.2 mm", "0.0031, m, 3.1 mm", "1.2346, m, 1235 mm", "12.34, m, 12.3 m", "0.43, m3, 0.43 m3",
            "0.0135, m3, 13.5 l", "0.00009, m3, 90 ml", "12.4, kg, 12.4 kg", "0.2, kg, 200 g", "2639.3, kg, 2639 kg",
            "1440, s, 24 min", "36, s, 36 s", "43200, s, 12 h", "1209600, s, 14 d", "20, degC, 20 degC",
            "0.45, kg/m2, 450 g/m2", "1.05, kg/m2, 1.05 kg/m2", "36, kg/m3, 36 kg/m3", "1130, kg/m3, 1.13 kg/l",
            "0.003, %, 0.3 %", "1.15, %, 115 %", "32, %, 32", "0, m, 0 mm", "-0.0015, m, -1.5 mm" })
    void metricFiguresAreShownAsAShopSaysThem(double si, String unit, String shown) {
        assertThat(Display.of(UnitSystem.METRIC).format(si, of(unit))).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({ "0.6096, m, 24 in", "9.144, m, 30 ft", "0.09290304, m2, 1 ft2", "0.45359237, kg, 1 lb", "0.02834952, kg, 1 oz",
            "0.003785411784, m3, 1 gal", "0.02831685, m3, 7.48 gal", "0.5, m3, 17.7 ft3", "0.457728, kg/m2, 1.5 oz/ft2",
            "32.037, kg/m3, 2 lb/ft3", "20, degC, 68 degF", "1440, s, 24 min", "1, m3/s, 2119 cfm" })
    void americanFiguresAreShownInTradeUnits(double si, String unit, String shown) {
        assertThat(Display.of(UnitSystem.US).format(si, of(unit))).isEqualTo(shown);
    }

    @Test
    void aFilmIsShownInTheUnitAskedFor() {
        assertThat(Display.of(UnitSystem.METRIC).in(0.0002, Units.find("um").orElseThrow())).isEqualTo("200 um");
    }

    @Test
    void whatTheTradeHasNoUnitForIsShownInSi() {
        assertThat(Display.of(UnitSystem.US).format(2.5, of("kg/m2/s"))).isEqualTo("2.5 kg/m2/s");
    }

    @Test
    void anUnknownFigureIsCalledSo() {
        assertThat(Display.of(UnitSystem.METRIC).format(Double.NaN, Dimension.LENGTH)).isEqualTo("unknown");
    }

    @ParameterizedTest
    @CsvSource({ "1e-30, 1E-30", "1.23456e12, 1.23E+12", "999999999, 999999999", "999.5, 1000", "0.1, 0.1", "12345.6, 12346" })
    void onlyExtremeNumbersHaveAnExponent(double value, String shown) {
        assertThat(Display.number(value)).isEqualTo(shown);
    }

    @Test
    void aFigureLooksTheSameInEveryCountry() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Display.of(UnitSystem.METRIC).format(0.0132, Dimension.LENGTH)).isEqualTo("13.2 mm");
        } finally {
            Locale.setDefault(before);
        }
    }
}
