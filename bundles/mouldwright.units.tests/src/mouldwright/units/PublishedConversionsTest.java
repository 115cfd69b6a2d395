package mouldwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Leans on unit definitions (International Yard and Pound, 1959; US gallon of 231 cubic inches) and on published sheets. */
class PublishedConversionsTest {

    private static double si(double value, String unit) {
        return Units.find(unit).orElseThrow().toSi(value);
    }

    private static double in(double value, String from, String to) {
        return Units.find(to).orElseThrow().fromSi(si(value, from));
    }

    @ParameterizedTest
    @CsvSource({ "0.75, 228.864", "1, 305.1517", "1.5, 457.728", "2, 610.303" }) // definitions of ounce and foot
    void ouncesToTheSquareFootAreMatWeights(double ounces, double grams) {
        assertThat(in(ounces, "oz/ft2", "g/m2")).isCloseTo(grams, within(5e-4));
    }

    @ParameterizedTest
    @CsvSource({ "1, 16.01846", "2, 32.037", "4, 64.074", "6, 96.111", "8, 128.148", "16, 256.295" }) // definitions
    void poundsToTheCubicFootAreFoamDensities(double pounds, double kilograms) {
        assertThat(in(pounds, "lb/ft3", "kg/m3")).isCloseTo(kilograms, within(5e-4));
    }

    @Test
    void tenPoundsToTheGallonIsTheDensityOfFoamComponents() {
        assertThat(si(10, "lb/gal")).isCloseTo(1198.26, within(5e-3)); // Foam Concepts, "around ten pounds per gallon"
    }

    @ParameterizedTest
    @CsvSource({ "12, .305", "15, .381", "18, .457", "20, .508" }) // FGCI and Fiberglass Supply gel coat films
    void milsAreGelCoatFilms(double mil, double millimetres) {
        assertThat(in(mil, "mil", "mm")).isCloseTo(millimetres, within(5e-4));
    }

    @Test
    void aFluidOunceIsNoCubicInch() {
        assertThat(in(1, "floz", "in3")).isCloseTo(1.8047, within(5e-5)); // a published slip says 1 in3
    }

    @Test
    void anOunceIsAMassAndAFluidOunceAVolume() {
        assertThat(Units.find("oz").orElseThrow().dimension()).isEqualTo(Dimension.MASS);
        assertThat(Units.find("floz").orElseThrow().dimension()).isEqualTo(Dimension.VOLUME);
    }

    @Test
    void aGallonIs231CubicInches() {
        assertThat(in(1, "gal", "in3")).isCloseTo(231, within(1e-10)); // definition
    }

    @Test
    void theImperialGallonIsTheLargerOne() {
        assertThat(in(1, "galUK", "l")).isEqualTo(4.54609); // UK Weights and Measures Act 1985
    }

    @Test
    void oneGallonIsSixteenHundredAndFourSquareFootMils() {
        double film = si(1, "gal") / (si(1, "ft2") * si(1, "mil"));

        assertThat(film).isCloseTo(1604.17, within(5e-3)); // geometry, quoted on US coating sheets
    }

    @Test
    void aGallonCoversWhatTheQuantityTableSays() {
        double sixteenthOfAnInch = in(si(1, "gal") / si(1.0 / 16, "in"), "m2", "ft2");

        assertThat(sixteenthOfAnInch).isCloseTo(25.667, within(5e-4)); // Jamestown Distributors prints 25.6
    }

    @ParameterizedTest
    @CsvSource({ "212, 100", "68, 20", "64.4, 18", "32, 0", "-40, -40", "77, 25" }) // definition of the Fahrenheit scale
    void fahrenheitReadingsBecomeCelsius(double fahrenheit, double celsius) {
        assertThat(si(fahrenheit, "degF")).isCloseTo(celsius, within(1e-12));
    }

    @Test
    void aPublishedSlipInDegreesIsFound() {
        assertThat(si(700, "degF")).isCloseTo(371.1, within(0.05)); // an abstract prints 379 degC (700 degF)
    }

    @Test
    void aDifferenceOfNineDegreesFahrenheitIsFiveCelsius() {
        assertThat(Units.toSiDifference(9, Units.find("degF").orElseThrow())).isEqualTo(5); // definition
    }

    @Test
    void aDifferenceInKelvinIsOneInCelsius() {
        assertThat(Units.toSiDifference(5, Units.find("K").orElseThrow())).isEqualTo(5); // definition
    }

    @Test
    void aReadingInKelvinIsShifted() {
        assertThat(si(293.15, "K")).isCloseTo(20, within(1e-12)); // definition
    }

    @ParameterizedTest
    @CsvSource({ "9, mm, 0.009", "600, mm, 0.6", "3.3, mm, 0.0033", "450, g/m2, 0.45", "1.16, kg/l, 1160", "30, %, 0.3",
            "24, in, 0.6096", "400, um, 0.0004", "36, kg/m3, 36", "1.2, g/cm3, 1200" })
    void aNumberComesOutAsItWouldBeWrittenInSi(double value, String unit, double expected) {
        assertThat(si(value, unit)).isEqualTo(expected); // closed form, to the last bit
    }

    @Test
    void cubicFeetAMinuteAreAirFlow() {
        assertThat(in(1, "m3/s", "cfm")).isCloseTo(2118.88, within(5e-3)); // definition
    }

    @Test
    void halfATurnIsPi() {
        assertThat(si(180, "deg")).isEqualTo(Math.PI); // definition
    }
}
