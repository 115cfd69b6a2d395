package mouldwright.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import mouldwright.process.Air.Application;

class AirTest {

    private static final double CFM = 0.3048 * 0.3048 * 0.3048 / 60;

    @ParameterizedTest
    @CsvSource({ "RESIN_NOT_ATOMISED, 30, 32.1055", "RESIN_NOT_ATOMISED, 35, 45.5914", "RESIN_NOT_ATOMISED, 40, 61.7753",
            "RESIN_ATOMISED, 30, 53.4745", "RESIN_ATOMISED, 35, 77.7129", "RESIN_ATOMISED, 40, 107.4295",
            "GEL_COAT, 30, 132.5983", "GEL_COAT, 35, 171.6619", "GEL_COAT, 40, 214.6893" })
    void styreneReleasedToTheTonne(Application application, double percent, double kilograms) {
        // US 40 CFR 63 subpart VVVV table 3; figures computed from its formulae
        assertThat(Air.styrenePerMass(application, percent / 100) * 1000).isCloseTo(kilograms, within(6e-5));
    }

    @ParameterizedTest
    @CsvSource({ "50, 1175.2", "100, 587.6", "20, 2938" })
    void aPintOfStyreneAnHourNeedsAGaleOfAir(double ppm, double flow) {
        // NRC, Dilution and local exhaust: q = 387 lb/(MW min d), Q = q K 10^6 / C with 0.9493 lb in 60 min; 387 ft3 is a mole
        // of lb at 70 degF, and 24.45 l at 25 degC is 0.2 % off that
        double release = Air.release(0.9493 * 0.45359237, 1, 3600);

        assertThat(Air.dilution(release, 0.1042, ppm, 1, (70 - 32) / 1.8) / CFM).isCloseTo(flow, within(flow * 0.003));
    }

    @Test
    void theUniversityFormulaAgrees() {
        // Univ. of Toledo, ch. X: Q = 403 x 10^6 SG ER K/(MW C), ER in pints a minute; 1 pint/h, SG .91: 1173.16 cfm at 50 ppm
        double release = 0.000473176473 * 910 / 3600;

        assertThat(Air.dilution(release, 0.1042, 50, 1, 21.1) / CFM).isCloseTo(1173.16, within(1173.16 * 0.004));
    }

    @Test
    void onePartPerMillionOfStyreneIsFourMilligrams() { // NIOSH Pocket Guide: 1 ppm = 4.26 mg/m3
        assertThat(Air.concentration(1, Air.STYRENE_MOLAR_MASS, 25) * 1e6).isCloseTo(4.26, within(5e-3));
    }

    @Test
    void theExposureLimitInMilligrams() { // NIOSH REL 50 ppm: 212.99 by formula, published rounded to 215
        assertThat(Air.concentration(50, Air.STYRENE_MOLAR_MASS, 25) * 1e6).isCloseTo(212.99, within(0.01));
    }

    @Test
    void isocyanateInMilligrams() { // ACGIH TLV of MDI .005 ppm = .051 mg/m3 (NIOSH IDLH sheet); MW 250.25
        assertThat(Air.concentration(0.005, 0.25025, 25) * 1e6).isCloseTo(0.05118, within(5e-6));
    }

    @Test
    void warmAirIsThinner() { // gas law
        assertThat(Air.concentration(1, Air.STYRENE_MOLAR_MASS, 40) / Air.concentration(1, Air.STYRENE_MOLAR_MASS, 25))
                .isCloseTo(298.15 / 313.15, within(1e-12));
    }

    @Test
    void aBadlySweptRoomNeedsItsMixingFactor() { // closed form
        assertThat(Air.dilution(1e-4, Air.STYRENE_MOLAR_MASS, 20, 3, 20))
                .isCloseTo(3 * Air.dilution(1e-4, Air.STYRENE_MOLAR_MASS, 20, 1, 20), within(1e-12));
    }

    @Test
    void aRoomIsNeverMixedBetterThanPerfectly() {
        assertThatThrownBy(() -> Air.dilution(1e-4, Air.STYRENE_MOLAR_MASS, 20, 0.5, 20))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
