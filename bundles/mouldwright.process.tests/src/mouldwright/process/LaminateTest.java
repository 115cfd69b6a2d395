package mouldwright.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import mouldwright.process.Laminate.Densities;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class LaminateTest {

    private static final Densities ISO = Densities.ISO_12215_5;

    /** ISO 12215-5 annex form, t = w/3.072 (2.56/psi - 1.36), from memory; table computed from it. */
    @ParameterizedTest
    @CsvSource({
        "0.30, 0.25, .8672", "0.30, 0.28, .7600", "0.30, 0.2857142857, .7422", "0.30, 0.30, .7005", "0.30, 0.3333333333, .6172",
        "0.30, 0.35, .5815",
        "0.45, 0.25, 1.3008", "0.45, 0.28, 1.1401", "0.45, 0.2857142857, 1.1133", "0.45, 0.30, 1.0508",
        "0.45, 0.3333333333, .9258", "0.45, 0.35, .8722",
        "0.60, 0.25, 1.7344", "0.60, 0.28, 1.5201", "0.60, 0.2857142857, 1.4844", "0.60, 0.30, 1.4010",
        "0.60, 0.3333333333, 1.2344", "0.60, 0.35, 1.1629",
        "0.90, 0.25, 2.6016", "0.90, 0.28, 2.2801", "0.90, 0.2857142857, 2.2266", "0.90, 0.30, 2.1016",
        "0.90, 0.3333333333, 1.8516", "0.90, 0.35, 1.7444",
        "1.80, 0.25, 5.2031", "1.80, 0.28, 4.5603", "1.80, 0.2857142857, 4.4531", "1.80, 0.30, 4.2031",
        "1.80, 0.3333333333, 3.7031", "1.80, 0.35, 3.4888" })
    void aPlyCuresToTheThicknessOfTheTable(double fibre, double psi, double millimetres) {
        assertThat(Laminate.curedThickness(fibre, psi, ISO) * 1000).isCloseTo(millimetres, within(6e-5));
    }

    @Property(tries = 200)
    void theRuleOfMixturesIsIso12215(@ForAll @DoubleRange(min = 0.05, max = 3) @Scale(4) double fibre,
            @ForAll @DoubleRange(min = 0.1, max = 0.9) @Scale(4) double psi) { // identity: 3.072 = 2.56 x 1.20, 1.36 = 2.56 - 1.20
        double iso = Laminate.curedThicknessIso(fibre, psi);

        assertThat(Laminate.curedThickness(fibre, psi, ISO)).isCloseTo(iso, within(iso * 1e-12));
    }

    @ParameterizedTest
    @CsvSource({ "0.25, 1383.78, .13514", "0.30, 1427.51, .16729", "0.3333333333, 1458.23, .18987",
            "0.35, 1474.09, .20154", "0.50, 1634.04, .31915" })
    void moreGlassMakesADenserLaminate(double psi, double density, double volumeFraction) { // rule of mixtures, textbook
        assertThat(Laminate.density(psi, ISO)).isCloseTo(density, within(6e-3));
        assertThat(Laminate.fibreVolumeFraction(psi, ISO)).isCloseTo(volumeFraction, within(6e-6));
    }

    @Test
    void thicknessIsMassOverDensity() { // identity: (w/psi)/rho
        double psi = 1 / 3.5;

        assertThat(Laminate.massPerArea(0.45, psi) / Laminate.density(psi, ISO))
                .isCloseTo(Laminate.curedThickness(0.45, psi, ISO), within(1e-15));
    }

    @Test
    void matAtThirtyPercentTakesSevenThirdsOfItsWeightInResin() { // mass balance
        assertThat(Laminate.resinPerArea(0.45, 0.30)).isCloseTo(1.05, within(1e-12));
        assertThat(Laminate.massPerArea(0.45, 0.30)).isCloseTo(1.50, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({ "0.30, 0.75", "0.45, 1.125", "0.60, 1.50", "0.90, 2.25", "1.80, 4.50" })
    void matAtTwoAndAHalfToOneTakesTwoAndAHalfTimesItsWeight(double fibre, double resin) {
        // Practical Action, Fibreglass boat building; East Coast Fibreglass; CFS guide p.3: 2.5 : 1 by weight
        assertThat(Laminate.resinPerArea(fibre, Laminate.glassFraction(2.5))).isCloseTo(resin, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({ "2.5, 0.2857", "1.25, 0.4444" })
    void publishedPercentagesAreRounded(double resinToGlass, double psi) {
        // Practical Action, Fibreglass boat building, prints 30 % and 45 %
        assertThat(Laminate.glassFraction(resinToGlass)).isCloseTo(psi, within(5e-5));
    }

    @ParameterizedTest
    @CsvSource({ "0.30, 0.65, .3158", "0.45, 1.1, .2903", "0.60, 1.5, .2857" })
    void theSpreadRatesOfSingleMatsGiveTheirGlassContent(double fibre, double resin, double psi) {
        // CFS fibreglass guide, p.3, material spread rates
        assertThat(Laminate.glassFraction(resin / fibre)).isCloseTo(psi, within(5e-5));
        assertThat(Laminate.resinPerArea(fibre, psi)).isCloseTo(resin, within(5e-4));
    }

    @ParameterizedTest
    @CsvSource({ "64, 0.228864, 3.06, .246", "50, 0.228864, 3.92, .203", "30, 0.457728, 3.26, .235" })
    void gallonCoveragesGiveRicherLaminates(double squareFeet, double fibre, double resinToGlass, double psi) {
        // LBI Fiberglass, How much resin and glass (64 ft2 of 3/4 oz mat to the US gallon); Rayplex (50 and 30 ft2); at 1.10 kg/l
        double resin = 3.785411784 * 1.10 / (squareFeet * 0.09290304);

        assertThat(resin / fibre).isCloseTo(resinToGlass, within(6e-3));
        assertThat(Laminate.glassFraction(resin / fibre)).isCloseTo(psi, within(6e-4));
        assertThat(Laminate.resinPerArea(fibre, Laminate.glassFraction(resin / fibre))).isCloseTo(resin, within(1e-12));
    }

    @Test
    void twiceTheMatIsTheLeanestWetOut() { // TotalBoat support, How much resin: 3 oz/ft2 of resin to 1.5 oz mat
        assertThat(Laminate.resinPerArea(0.457728, 1 / 3.0)).isCloseTo(0.915456, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({ "0.30, 4.203", "0.35, 3.489" })
    void theClassTestLaminateLiesInItsRange(double psi, double millimetres) {
        // Lloyd's Register MQPS 14-2 form CMA/1R: 1800 g/m2 at 30 to 35 % glass; thickness computed
        assertThat(Laminate.curedThickness(1.8, psi, ISO) * 1000).isCloseTo(millimetres, within(6e-4));
    }

    @Test
    void sixLayersOfMatMakeASmallMould() {
        // Practical Boat Owner, May 2018: six layers of 450 g; thickness and mass computed at 2.5 : 1
        double psi = Laminate.glassFraction(2.5);

        assertThat(6 * Laminate.curedThickness(0.45, psi, ISO) * 1000).isCloseTo(6.680, within(6e-4));
        assertThat(6 * Laminate.massPerArea(0.45, psi)).isCloseTo(9.45, within(1e-12));
    }

    @Test
    void cutFoamDrinksAboutAPoundOfResinToTheSquareYard() { // common practice
        assertThat(Laminate.EXTRA_ON_CUT_FOAM).isEqualTo(new Range(0.20, 0.35, 0.50));
    }

    @ParameterizedTest
    @ValueSource(doubles = { 0, 1, -0.3, 30, Double.NaN })
    void aGlassContentThatCannotBeIsRefused(double psi) {
        assertThatThrownBy(() -> Laminate.curedThickness(0.45, psi, ISO)).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("glass fraction");
    }
}
