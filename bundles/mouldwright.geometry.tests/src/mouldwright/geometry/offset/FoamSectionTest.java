package mouldwright.geometry.offset;

import static mouldwright.geometry.Bodies.half;
import static mouldwright.geometry.Bodies.loft;
import static org.assertj.core.api.Assertions.assertThat;

import mouldwright.geometry.Bodies;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the length of chords does to areas. */
class FoamSectionTest {
    private static final Loft CYLINDER = loft(x -> half(Bodies.circle(0.3, 1)), 0, 1);

    private static FoamSection section(double chord) {
        return FoamSection.of(CYLINDER, 0.5, Side.AFT, BuildUp.uniform(0.003, Bare.NONE), chord);
    }

    // closed form: pi (r - t)^2, less two thirds of the chords' height times the girth at most
    @ParameterizedTest
    @CsvSource({ "0.00002, 0.0001", "0.0001, 0.0005" })
    void chordsKeepTheAreaAsStated(double chord, double share) {
        double circle = Math.PI * 0.297 * 0.297, area = section(chord).foam().region().area();
        assertThat(area).isBetween(circle * (1 - share), circle);
    }

    @Test void longerChordsTakeFewerCorners() {
        int fine = section(2e-5).foam().region().pieces().getFirst().size(), coarse = section(1e-4).foam().region().pieces().getFirst().size();
        assertThat(coarse).isLessThan(fine * 2 / 3);
    }
}
