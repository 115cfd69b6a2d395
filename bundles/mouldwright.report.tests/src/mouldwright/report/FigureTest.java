package mouldwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.UnitSystem;
import org.junit.jupiter.api.Test;

/** How single figures are printed; the conversions are those of the units' own tests. */
class FigureTest {

    private static final Display METRIC = Display.of(UnitSystem.METRIC);

    @Test void aColumnHasOneUnitAndOneCountOfDecimals() {
        Figure figure = new Figure(METRIC, 0.04254, Dimension.VOLUME);
        assertThat(figure.unit()).isEqualTo("l");
        assertThat(figure.of(0.04254)).isEqualTo("42.5");
        assertThat(figure.of(0.0003)).isEqualTo("0.3");
    }

    @Test void aCountHasNoUnitAndNoDecimals() {
        Figure figure = new Figure(METRIC, 12, Dimension.RATIO);
        assertThat(figure.unit()).isEmpty();
        assertThat(figure.of(1)).isEqualTo("1");
    }

    @Test void aHollowKeepsItsSign() {
        assertThat(new Figure(METRIC, 0.0004, Dimension.LENGTH).of(-0.0004)).isEqualTo("-0.400");
    }

    @Test void whatRoundsToNothingHasNoSign() {
        assertThat(new Figure(METRIC, 1, Dimension.LENGTH).of(-1e-9)).isEqualTo("0");
    }

    @Test void aBevelIsShownInDegrees() {
        assertThat(new Figure(METRIC, Math.PI / 6, Dimension.ANGLE).of(Math.PI / 6)).isEqualTo("30.0");
    }
}
