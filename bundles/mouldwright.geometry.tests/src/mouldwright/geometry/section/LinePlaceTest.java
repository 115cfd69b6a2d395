package mouldwright.geometry.section;

import static mouldwright.geometry.Bodies.full;
import static mouldwright.geometry.Bodies.half;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import mouldwright.geometry.Bodies;
import org.junit.jupiter.api.Test;

/** Longitudinal lines on sections that have no point on them. */
class LinePlaceTest {
    private static final SectionForm CIRCLE = new SectionForm.Superellipse(1, 2, 2, 0);

    // closed form: height 1 - cos(angle) of a unit circle standing on the base
    @Test void aLineAtAHeightBordersTwoStretchesWithoutAKnuckle() {
        Section section = half(new SectionForm.Marked(CIRCLE, List.of(new LinePlace.AtHeight("chine", 0.5))));
        assertThat(section.stretches()).hasSize(2);
        assertThat(section.stretches().getFirst().length()).isCloseTo(Math.PI / 3, within(1e-9));
        assertThat(section.stretches().getFirst().to()).isEqualTo(new Mark(Optional.of("chine"), false));
    }

    // a full section's first crossing on its way up is to starboard
    @Test void aLineAtAHeightIsPlacedToStarboardOfAFullSection() {
        Section section = full(new SectionForm.Marked(CIRCLE, List.of(new LinePlace.AtHeight("chine", 0.5))));
        assertThat(section.stretches().getFirst().at(1).y()).isCloseTo(Math.sqrt(0.75), within(1e-9));
    }

    // closed form: a tenth of the half girth of a circle
    @Test void aLineAtAShareOfTheGirthLiesThere() {
        Section section = half(new SectionForm.Marked(CIRCLE, List.of(new LinePlace.AtGirth("chine", 0.1))));
        assertThat(section.stretches().getFirst().length()).isCloseTo(0.1 * Math.PI, within(1e-9));
    }

    // girth counts the bare closure at the bottom: 0.2 of closure, 0.5 of side
    @Test void theShareOfTheGirthCountsTheClosure() {
        SectionForm side = SectionForm.Points.of(OutlinePoint.smooth(0.2, 0), OutlinePoint.smooth(0.2, 0.6));
        Section section = half(new SectionForm.Marked(side, List.of(new LinePlace.AtGirth("rail", 0.5))));
        assertThat(section.stretches().getFirst().length()).isCloseTo(0.3, within(1e-12));
    }

    @Test void aLineAtAKnuckleGivesItItsName() {
        Section section = half(new SectionForm.Marked(Bodies.box(1, 0.5, 2), List.of(new LinePlace.AtHeight("rail", 2))));
        assertThat(section.stretches()).hasSize(3);
        assertThat(section.stretches().get(1).to()).isEqualTo(new Mark(Optional.of("rail"), true));
    }

    // closed form: an ellipse is a circle stretched
    @Test void aSectionLikeAnotherIsStretchedWithItsLines() {
        SectionForm marked = new SectionForm.Marked(CIRCLE, List.of(new LinePlace.AtHeight("chine", 0.5)));
        Section section = half(new SectionForm.Scaled(marked, 0.9, 0.5, 0, 0.2, 0.1));
        assertThat(section.area()).isCloseTo(0.45 * Math.PI, within(1e-9));
        assertThat(section.stretches().getFirst().at(0).z()).isCloseTo(0.2 - 0.5 * 0.2 + 0.1, within(1e-12));
        assertThat(section.stretches().getFirst().at(1).z()).isCloseTo(0.2 + 0.5 * 0.3 + 0.1, within(1e-9));
    }

    // a named point without a knuckle leaves the curve as smooth as it was
    @Test void aNamedPointWithoutAKnuckleDoesNotCreaseTheCurve() {
        List<OutlinePoint> plain = Bodies.halfCircle(1, 9);
        List<OutlinePoint> named = new java.util.ArrayList<>(plain);
        named.set(3, named.get(3).on("waist"));
        Section section = half(new SectionForm.Points(named));
        assertThat(section.stretches()).hasSize(2);
        assertThat(section.area()).isCloseTo(half(new SectionForm.Points(plain)).area(), within(1e-11));
    }

    @Test void aBareStretchReachesFromKnuckleToKnuckle() {
        Section section = half(SectionForm.Points.of(OutlinePoint.smooth(0, 0), OutlinePoint.knuckle(1, 0).afterBare(),
                OutlinePoint.knuckle(1, 1), OutlinePoint.smooth(0, 1)));
        assertThat(section.stretches()).extracting(Stretch::bare).containsExactly(true, false, false);
    }

    @Test void pointsOnTheCentrelineAloneAreAKnifeEdge() {
        Section stem = half(SectionForm.Points.of(OutlinePoint.smooth(0, 0.06), OutlinePoint.smooth(0, 0.34)));
        assertThat(stem.shape()).isEqualTo(SectionShape.KNIFE_EDGE);
        assertThat(stem.area()).isZero();
        assertThat(stem.centroid().z()).isCloseTo(0.2, within(1e-12));
    }

    @Test void aNoseIsAPoint() {
        assertThat(half(new SectionForm.Nose(0, 0.34)).shape()).isEqualTo(SectionShape.POINT);
        assertThat(half(new SectionForm.Nose(0, 0.34)).girth()).isZero();
    }
}
