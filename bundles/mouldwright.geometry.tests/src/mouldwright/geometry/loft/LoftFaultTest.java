package mouldwright.geometry.loft;

import static mouldwright.geometry.Bodies.full;
import static mouldwright.geometry.Bodies.half;
import static mouldwright.geometry.section.OutlinePoint.knuckle;
import static mouldwright.geometry.section.OutlinePoint.smooth;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import mouldwright.geometry.Bodies;
import mouldwright.geometry.section.Section;
import mouldwright.geometry.section.SectionForm;
import org.junit.jupiter.api.Test;

/** Why stations do not make a body. */
class LoftFaultTest {
    private static final Section CIRCLE = half(Bodies.circle(0.5, 1));
    private static final Section NOSE = half(new SectionForm.Nose(0, 1));

    private static List<LoftFault> faults(LoftStation... stations) {
        return Loft.through(Arrays.asList(stations)).faults();
    }

    private static LoftStation at(double x, Section section) {
        return new LoftStation(x, section, false);
    }

    @Test void oneStationMakesNoBody() {
        assertThat(faults(at(0, CIRCLE))).containsExactly(new LoftFault.TooFewStations(1));
    }

    @Test void stationsOutOfOrderAreNamed() {
        assertThat(faults(at(0, CIRCLE), at(2, CIRCLE), at(1, CIRCLE))).containsExactly(new LoftFault.OutOfOrder(1, 2));
    }

    @Test void twoStationsAtOnePlaceAreNamed() {
        assertThat(faults(at(0, CIRCLE), at(1, CIRCLE), at(1, CIRCLE))).containsExactly(new LoftFault.Together(1, 2));
    }

    @Test void aStationNowhereIsNamed() {
        assertThat(faults(at(0, CIRCLE), at(Double.NaN, CIRCLE))).containsExactly(new LoftFault.NotFinite(1));
    }

    @Test void twoPointsMakeNoBody() {
        assertThat(faults(at(0, NOSE), at(1, NOSE))).containsExactly(new LoftFault.NoBody());
    }

    @Test void aBodyMayNotShrinkToAPointHalfway() {
        assertThat(faults(at(0, CIRCLE), at(1, NOSE), at(2, CIRCLE))).containsExactly(new LoftFault.PinchedInside(1));
    }

    @Test void halfAndFullSectionsDoNotMix() {
        assertThat(faults(at(0, CIRCLE), at(1, full(Bodies.circle(0.5, 1))))).containsExactly(new LoftFault.KindsDiffer(0, 1));
    }

    @Test void aKnuckleAgainstASmoothSectionIsCounted() {
        Section chined = half(SectionForm.Points.of(smooth(0, 0), knuckle(0.5, 0.2), smooth(0, 1)));
        assertThat(faults(at(0, CIRCLE), at(1, chined))).containsExactly(new LoftFault.KnucklesDiffer(0, 1, "", "", 0, 1));
    }

    @Test void knucklesAreCountedBetweenTheLinesTheyLieBetween() {
        Section one = half(SectionForm.Points.of(smooth(0, 0), knuckle(0.5, 0.2).on("chine"), knuckle(0.5, 0.5),
                knuckle(0.4, 0.9).on("rail"), smooth(0, 1)));
        Section other = half(SectionForm.Points.of(smooth(0, 0), knuckle(0.5, 0.2).on("chine"), knuckle(0.4, 0.9).on("rail"),
                smooth(0, 1)));
        assertThat(faults(at(0, one), at(1, other)))
                .containsExactly(new LoftFault.KnucklesDiffer(0, 1, "chine", "rail", 1, 0));
    }

    @Test void aLineOnOneOfTwoStationsIsNamed() {
        Section with = half(SectionForm.Points.of(smooth(0, 0), knuckle(0.5, 0.2).on("chine"), smooth(0, 1)));
        Section without = half(SectionForm.Points.of(smooth(0, 0), knuckle(0.5, 0.2), smooth(0, 1)));
        assertThat(faults(at(0, with), at(1, without))).containsExactly(new LoftFault.LineMissing(0, 1, "chine", 1));
        assertThat(faults(at(0, without), at(1, with))).containsExactly(new LoftFault.LineMissing(0, 1, "chine", 0));
    }

    @Test void linesInDifferentOrderAreNamed() {
        Section one = half(SectionForm.Points.of(smooth(0, 0), knuckle(0.5, 0.2).on("a"), knuckle(0.5, 0.8).on("b"), smooth(0, 1)));
        Section other = half(SectionForm.Points.of(smooth(0, 0), knuckle(0.5, 0.2).on("b"), knuckle(0.5, 0.8).on("a"),
                smooth(0, 1)));
        assertThat(faults(at(0, one), at(1, other))).containsExactly(new LoftFault.LinesCross(0, 1, "a"));
    }

    @Test void aPointedEndGoesWithAnyNeighbour() {
        assertThat(faults(at(0, NOSE), at(1, half(Bodies.box(0.3, 0, 0.4))), at(2, half(Bodies.box(0.3, 0, 0.5))))).isEmpty();
    }
}
