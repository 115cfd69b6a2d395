package mouldwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Leans on the language's own list of units and on common practice in naming what they measure. */
class UnitSpellingTest {

    @ParameterizedTest
    @CsvSource({ "mm, length", "yd, length", "thou, length", "in2, area", "cm2, area", "ft3, volume", "cm3, volume",
            "pt, volume", "qt, volume", "mg, mass", "week, time", "d, time", "g/m2, mass per area", "oz/yd2, mass per area",
            "g/cm3, density", "g/l, density", "lb/gal, density", "m2/h, area per time", "ft2/h, area per time",
            "m2/kg, area per mass", "ft2/lb, area per mass", "m2/l, area per volume", "ft2/gal, area per volume",
            "kg/h, mass per time", "m3/h, volume per time", "cfm, volume per time", "%, plain number", "degF, temperature",
            "deg, angle", "kg/m, mass per length", "m/s, speed", "ml/kg, volume per mass" })
    void aUnitMeasuresWhatTheTradeSays(String spelling, String word) {
        assertThat(Units.find(spelling).orElseThrow().dimension().word()).isEqualTo(word);
    }

    @ParameterizedTest
    @CsvSource({ "\u00b5m, um", "\u03bcm, um", "\u00b0C, degC", "\u00b0F, degF", "m\u00b2, m2", "kg/m\u00b3, kg/m3" })
    void otherWaysToWriteAUnitAreTheSameUnit(String written, String plain) {
        assertThat(Units.find(written)).isEqualTo(Units.find(plain)).isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = { "", " ", "/", "m/", "/m", "MM", "Kg", "kg2", "m4", "m22", "in 2", "degC/m", "m/degC", "%/m",
            "kg/%", "K2", "station", "mm/h/h/h", "2", "m2/3" })
    void whatIsNoUnitIsNotTakenForOne(String word) {
        assertThat(Units.isUnit(word)).isFalse();
    }

    @Test
    void theMessageNamesWhatWasMeantAndWhatWasWritten() {
        Dimension written = Units.find("g/m2").orElseThrow().dimension();

        assertThat(Dimension.LENGTH.expectedBut("450 g/m2", written))
                .isEqualTo("length expected, 450 g/m2 is a mass per area");
    }

    @Test
    void anAreaIsSpokenOfWithAn() {
        assertThat(Dimension.AREA.withArticle()).isEqualTo("an area");
    }

    @Test
    void whatHasNoWordIsNamedByItsUnit() {
        assertThat(Units.find("kg/m2/h").orElseThrow().dimension().withArticle()).isEqualTo("a quantity in kg/m2/s");
    }

    @Test
    void aLitreToTheSquareMetreIsAFilm() {
        Unit unit = Units.find("l/m2").orElseThrow();

        assertThat(unit.dimension()).isEqualTo(Dimension.LENGTH);
        assertThat(unit.toSi(0.4)).isEqualTo(0.0004); // geometry: 1 l/m2 is 1 mm
    }

    @Test
    void aPlainSpeedComposesWithAPower() {
        assertThat(Units.find("m/s2").orElseThrow().dimension()).isEqualTo(new Dimension(1, 0, -2, 0, 0));
    }

    @ParameterizedTest
    @CsvSource({ "degC, Cel", "in, [in_i]", "oz/ft2, '[oz_av]/[ft_i]2'", "kg/m3, kg/m3", "gal, [gal_us]", "week, wk",
            "mil, [mil_i]", "%, %" })
    void unitsAreWrittenOutInUcum(String spelling, String code) { // UCUM specification
        assertThat(Units.find(spelling).orElseThrow().ucum()).isEqualTo(code);
    }

    @ParameterizedTest
    @CsvSource({ "m2, AREA", "kg/m2, AREAL", "Cel, TEMPERATURE", "1, RATIO", "m2/s, AREA_RATE", "/m, COVERAGE" })
    void dimensionsAreWrittenOutInUcum(String code, String which) { // UCUM specification
        Dimension dimension = switch (which) {
            case "AREA" -> Dimension.AREA;
            case "AREAL" -> Dimension.AREAL_MASS;
            case "TEMPERATURE" -> Dimension.TEMPERATURE;
            case "RATIO" -> Dimension.RATIO;
            case "AREA_RATE" -> Dimension.AREA_RATE;
            default -> Dimension.COVERAGE_VOLUME;
        };

        assertThat(dimension.ucum()).isEqualTo(code);
    }

    @Test
    void completionOffersTheMetricDensityFirst() {
        assertThat(Units.unitsOf(Dimension.DENSITY)).startsWith("kg/m3").contains("lb/ft3", "lb/gal", "kg/l")
                .doesNotContain("g/m2");
    }

    @Test
    void completionOffersNothingForWhatTheTradeHasNoUnitFor() {
        assertThat(Units.unitsOf(new Dimension(5, 0, 0, 0, 0))).isEmpty();
    }

    @Test
    void everyUnitOfferedIsUnderstood() {
        for (Dimension dimension : List.of(Dimension.LENGTH, Dimension.AREA, Dimension.VOLUME, Dimension.AREAL_MASS)) {
            assertThat(Units.unitsOf(dimension)).isNotEmpty().allMatch(Units::isUnit);
        }
    }

    @ParameterizedTest
    @CsvSource({ "KG, kg", "MM, mm", "gm2, g/m2", "kg/m, kg/m2", "mn, mm", "minn, min", "flo, floz", "g/m22, g/m2", "ozft2, oz/ft2" })
    void aSlipOfTheKeyboardFindsTheUnitMeant(String slip, String meant) {
        assertThat(Units.suggest(slip)).contains(meant);
    }

    @Test
    void aWrongCaseIsTheNearestSlip() {
        assertThat(Units.suggest("Mil")).startsWith("mil");
    }

    @Test
    void aWordLikeNoUnitFindsNone() {
        assertThat(Units.suggest("superellipse")).isEmpty();
    }
}
