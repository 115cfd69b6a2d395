package mouldwright.geometry.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Outlines and regions by the shoelace formula and simple pieces. */
class RegionTest {

    private static Outline outline(double... yz) {
        List<PlanePoint> points = new ArrayList<>();
        for (int i = 0; i < yz.length; i += 2)
            points.add(new PlanePoint(yz[i], yz[i + 1]));
        return Outline.of(points);
    }

    // shoelace: (0,0)(4,0)(3,2)(1,2) gives 6 and reversing the order flips the sign, textbook
    @Test void anOutlineIsTurnedCounterClockwise() {
        assertThat(outline(0, 0, 4, 0, 3, 2, 1, 2).area()).isCloseTo(6, within(1e-12));
        assertThat(outline(1, 2, 3, 2, 4, 0, 0, 0).points().getFirst()).isEqualTo(new PlanePoint(0, 0));
    }

    // closed form: centroid of the trapezoid, h/3 (b + 2a)/(a + b)
    @Test void anOutlineHasItsCentroid() {
        PlanePoint centre = outline(0, 0, 4, 0, 3, 2, 1, 2).centroid();
        assertThat(centre.y()).isCloseTo(2, within(1e-12));
        assertThat(centre.z()).isCloseTo(2.0 / 3 * (4 + 2 * 2) / 6, within(1e-12));
    }

    @Test void aPlaceIsInsideOrOutsideAndAtItsDistance() {
        Outline box = outline(0, 0, 4, 0, 4, 3, 0, 3);
        assertThat(box.contains(new PlanePoint(1, 1))).isTrue();
        assertThat(box.contains(new PlanePoint(5, 1))).isFalse();
        assertThat(box.distance(new PlanePoint(7, 7))).isCloseTo(5, within(1e-12));
    }

    @Test void whatIsCutOutLeavesAHole() {
        Region ring = Region.of(outline(0, 0, 4, 0, 4, 3, 0, 3)).minus(Region.of(outline(1, 1, 2, 1, 2, 2, 1, 2)));
        assertThat(ring.area()).isCloseTo(11, within(1e-12));
        assertThat(ring.holes()).hasSize(1);
    }

    // the half of a bow tie that runs clockwise is inside out and falls away
    @Test void theClockwiseHalfOfABowTieFallsAway() {
        Region bow = Region.wound(new double[] { 0, 2, 0, 1 }, new double[] { 0, 2, 2, 0 });
        Region mirrored = Region.wound(new double[] { 0, 2, 2, 0 }, new double[] { 0, 2, 0, 2 });
        assertThat(bow.pieces()).hasSize(1);
        assertThat(bow.area()).isCloseTo(4.0 / 3, within(1e-12));
        assertThat(mirrored.area()).isCloseTo(1, within(1e-12));
    }

    @Test void aRingThatRunsClockwiseHasNothingInside() {
        assertThat(Region.wound(new double[] { 0, 0, 1, 1 }, new double[] { 0, 1, 1, 0 }).isEmpty()).isTrue();
    }

    // a triangle of base 4 and height 3: below the height h lie 6 (1 - ((3 - h)/3)^2)
    @Test void theAreaBelowAHeightIsCutOff() {
        Region triangle = Region.of(outline(0, 0, 4, 0, 2, 3));
        assertThat(triangle.areaBetween(0, 1, 0, 1)).isCloseTo(6 * (1 - 4.0 / 9), within(1e-12));
        assertThat(triangle.areaBetween(0, -1, -1, 0)).isCloseTo(6 * (1 - 4.0 / 9), within(1e-12));
        assertThat(triangle.areaBetween(1, 0, 0, 2)).isCloseTo(3, within(1e-12));
        assertThat(triangle.areaBetween(0, 1, 5, 6)).isZero();
    }

    // closed form: a slot apart from the pocket is a hole more, one that meets it makes it larger
    @Test void aSlotIsCutOutOfARingWhereverItLies() {
        Region ring = Region.of(box(0, 0, 1, 1)).minus(Region.of(box(0.4, 0.4, 0.9, 0.9)));
        Region apart = ring.minus(Region.of(box(0.1, 0.1, 0.3, 0.2))), meeting = ring.minus(Region.of(box(0.3, 0.5, 0.5, 0.6)));
        assertThat(apart.holes()).hasSize(2);
        assertThat(apart.area()).isCloseTo(1 - 0.25 - 0.02, within(1e-12));
        assertThat(meeting.holes()).hasSize(1);
        assertThat(meeting.area()).isCloseTo(1 - 0.25 - 0.01, within(1e-7));
        assertThat(ring.minus(Region.of(box(0.3, 0.3, 0.95, 0.95))).area()).isCloseTo(1 - 0.65 * 0.65, within(1e-7));
        assertThat(ring.minus(Region.of(box(0.5, 0.5, 0.6, 0.6))).area()).isCloseTo(0.75, within(1e-7));
    }

    private static Outline box(double fromY, double fromZ, double toY, double toZ) {
        return Outline.of(List.of(new PlanePoint(fromY, fromZ), new PlanePoint(toY, fromZ), new PlanePoint(toY, toZ), new PlanePoint(fromY, toZ)));
    }
}
