package mouldwright.drawing.subject;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Role;
import org.junit.jupiter.api.Test;

/** Sections of a round bar, whose measures are known: diameter 200 mm, a skin that leaves the plate smaller. */
class SectionDrawingTest {

    private static final String BAR = """
            sheet Ply { size 1220 mm by 2440 mm thickness 12 mm density 695 kg/m3 }
            plug Bar {
                units mm
                half sections
                station A at 0 superellipse 100 by 200 exponent 2 above 20
                station B at 300 like A
                station C at 600 like A
                frame { sheet Ply rim 30 }
            }
            """;

    private static Drawing section(String text, String station) {
        return Subjects.section(Plans.of(text), station, "Bar 1").orElseThrow();
    }

    /** 1 : 1.5 is the largest common scale at which 220 mm fit 150. */
    private static final double SCALE = 1.5;

    @Test void aRoundBarIsDrawnAsBroadAndHighAsItIs() {
        Extent box = Plans.items(section(BAR, "B"), Role.SURFACE).map(item -> item.mark().extent()).reduce(Extent::with).orElseThrow();
        assertThat(box.width() * SCALE).isCloseTo(200, within(0.2));
        assertThat(box.height() * SCALE).isCloseTo(200, within(0.2));
    }

    @Test void itsPlateIsTheAreaOfACircle() {
        Mark.Area plate = Plans.items(section(BAR, "B"), Role.AREA).map(item -> item.mark()).filter(Mark.Area.class::isInstance).map(Mark.Area.class::cast).findFirst().orElseThrow();
        assertThat(Plans.area(plate.rings().subList(0, 1)) * SCALE * SCALE).isCloseTo(Math.PI * 100 * 100, within(10.0));
    }

    @Test void itsDimensionsAreWrittenWithTheirUnit() {
        assertThat(Plans.words(section(BAR, "B")).map(Mark.Words::text)).contains("200 mm");
    }

    @Test void theNeighboursAreDrawnUnderTheirOwnNames() {
        assertThat(Plans.items(section(BAR, "B"), Role.FAINT).map(item -> item.about())).contains("station.A", "station.C");
        assertThat(Plans.items(section(BAR, "A"), Role.FAINT).map(item -> item.about())).containsExactly("station.B");
    }

    @Test void aPointedEndHasNoSection() {
        assertThat(Subjects.section(Plans.of(BAR), "Nowhere", "Bar 1")).isEmpty();
    }
}
