package mouldwright.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FinishTest {

    @Test
    void threeCoatsOfSurfacerAtSeventyPercentTransfer() { // geometry: 3 x 10 m2 x 0.2 mm / 0.7
        assertThat(Coating.volumeByFilm(10, 200e-6, 0.70, 3) * 1000).isCloseTo(6 / 0.7, within(1e-12));
    }

    @Test
    void aLitreToTheSquareMetreIsAMillimetre() { // geometry
        assertThat(Coating.volumeByFilm(1, 0.001, 1, 1)).isCloseTo(0.001, within(1e-18));
    }

    @Test
    void aHundredSquareFeetOfGelCoatTakeAboutAGallon() {
        // Rayplex, Estimating coverage: 100 ft2 to the US gallon at 15 mil; theory 16.04 mil
        double film = Coating.filmOf(3.785411784 / 9.290304, 1000);

        assertThat(film / 25.4e-6).isCloseTo(16.04, within(5e-3));
    }

    @ParameterizedTest
    @CsvSource({ "0.625, 0.521", "0.55, 0.458" })
    void aSpreadByMassIsAFilm(double kilograms, double millimetres) {
        // East Coast Fibreglass, laminating guide: 1 kg covers 1.6 m2; CFS guide p.3: 0.55 kg/m2; at 1.2 kg/l
        assertThat(Coating.filmOf(kilograms, 1200) * 1000).isCloseTo(millimetres, within(5e-4));
    }

    @Test
    void aGallonOfPrimerAtTwentyMilsCoversEightySquareFeet() { // polyester surfacing primer, theory 80.2 ft2
        assertThat(Coating.volumeByFilm(80.208 * 0.09290304, 20 * 25.4e-6, 1, 1)).isCloseTo(3.785411784e-3, within(1e-7));
    }

    @Test
    void waxGoesByItsSpread() { // closed form: 5 coats on 16 m2 at 80 m2/kg
        assertThat(Coating.byCoverage(16, 80, 5)).isCloseTo(1, within(1e-12));
    }

    @Test
    void aThirdOfTheSurfacerIsSandedOff() { // assumed default: 3 coats of 150 um leave 300 um
        assertThat(Coating.buildUp(150e-6, 3, Coating.SANDED_SHARE)).isCloseTo(300e-6, within(1e-15));
    }

    @Test
    void moreThanTheFilmCannotBeSandedOff() {
        assertThatThrownBy(() -> Coating.buildUp(150e-6, 3, 1.1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void eachGritTakesItsOwnTime() { // closed form: 6 m2 at 2 and at 1.5 m2/h are 7 h
        List<Coating.Grit> ladder = List.of(new Coating.Grit(80, 2 / 3600.0), new Coating.Grit(320, 1.5 / 3600.0));

        assertThat(Coating.sandingTime(6, ladder) / 3600).isCloseTo(7, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({ "0.020, 734.69", "0.010, 891.89" })
    void bubblesLightenAPaste(double bubbles, double density) { // mixture rule: polyester 1.20 and bubbles 0.25
        List<Paste.Part> parts = List.of(new Paste.Part(0.100, 1200), new Paste.Part(bubbles, 250));

        assertThat(Paste.density(parts)).isCloseTo(density, within(6e-3));
    }

    @Test
    void aGougeHoldsHalfToAllOfItsBox() { // closed forms: half an ellipsoid, half a paraboloid, straight walls
        Range volume = Hollow.volume(0.007, 0.090, 0.040);
        double straight = 0.007 * Math.PI / 4 * 0.090 * 0.040;

        assertThat(volume.low()).isCloseTo(straight / 2, within(1e-18));
        assertThat(volume.likely()).isCloseTo(2 * Math.PI / 3 * 0.045 * 0.020 * 0.007, within(1e-18));
        assertThat(volume.high()).isCloseTo(straight, within(1e-18));
    }

    @ParameterizedTest
    @CsvSource({ "0.0009, 'Plies[count=1]'", "0.0020, 'Plies[count=2]'", "0.0030, 'Filler[layers=1]'",
            "0.0070, 'Filler[layers=2]'", "0.0120, 'Filler[layers=2]'", "0.0130, 'NewFoam[]'" })
    void theDepthOfAGougeChoosesItsRemedy(double depth, String remedy) {
        // body filler data sheets, from memory: 6 mm a layer; total 12 mm and two plies of 1.1 mm as an example
        assertThat(Hollow.remedy(depth, 0.0011, 2, 0.006, 0.012)).hasToString(remedy);
    }

    @Test
    void withoutPliesFillerMendsAScratch() {
        assertThat(Hollow.remedy(0.0005, 0, 0, 0.006, 0.012)).isEqualTo(new Hollow.Filler(1));
    }

    @Test
    void aPlateThatLeansAftStandsProudOnAnAftSlope() { // closed form: d . n, half way up, normal 30 deg aft
        assertThat(PlateSetting.surfaceError(0.0015, 0.2, 0.4, 0, 0.5, 0.3)).isCloseTo(0.000375, within(1e-15));
    }

    @Test
    void aPlateSetLowLeavesItsTopLow() { // closed form
        assertThat(PlateSetting.surfaceError(0, 0.4, 0.4, -0.002, 0, 1)).isCloseTo(-0.002, within(1e-15));
    }

    @ParameterizedTest
    @CsvSource({ "1.0, 1.25, 0.05, 1", "1.25, 1.25, 0.05, 1", "1.26, 1.25, 0.05, 2", "2.45, 1.25, 0.05, 2", "2.46, 1.25, 0.05, 3",
            "0.03, 1.25, 0.05, 1" })
    void piecesCoverTheGirthWithTheirLaps(double girth, double width, double lap, int pieces) { // closed form
        assertThat(Roll.piecesAcross(girth, width, lap)).isEqualTo(pieces);
        assertThat(Roll.pieceWidth(girth, pieces, lap)).isLessThanOrEqualTo(width + 1e-12);
    }

    @Test
    void aLapOfThreeInchesCostsSixPercentOfTheRoll() {
        // Practical Action, Fibreglass boat building, p.7: overlaps of 3 to 4 in; 1.25/(1.25 - 0.075) = 1.0638
        int pieces = Roll.piecesAcross(117.5, 1.25, 0.075);

        assertThat(pieces * 1.25 / 117.5).isCloseTo(1.0638, within(5e-5));
    }

    @Test
    void aRollNoWiderThanItsLapIsRefused() {
        assertThatThrownBy(() -> Roll.piecesAcross(2, 0.05, 0.05)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aRangeThroughAFallingFormulaIsTurnedRound() { // closed form
        assertThat(new Range(1, 2, 4).through(x -> 8 / x)).isEqualTo(new Range(2, 4, 8));
    }

    @Test
    void aRangeOutOfOrderIsRefused() {
        assertThatThrownBy(() -> new Range(2, 1, 3)).isInstanceOf(IllegalArgumentException.class);
    }
}
