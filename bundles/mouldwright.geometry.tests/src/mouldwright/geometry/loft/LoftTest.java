package mouldwright.geometry.loft;

import static mouldwright.geometry.Bodies.half;
import static mouldwright.geometry.Bodies.loft;
import static mouldwright.geometry.Bodies.full;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mouldwright.geometry.Bodies;
import mouldwright.geometry.section.LinePlace;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.SectionForm;
import org.junit.jupiter.api.Test;

/** Bodies between their stations. */
class LoftTest {

    // closed form: a cone's radius falls evenly, its normal leans by the half angle everywhere
    @Test void aConeIsStraightBetweenItsStations() {
        Slice slice = Bodies.frustum(0.5, 0.3, 0.8, 2).at(0.3);
        assertThat(slice.area()).isCloseTo(Math.PI * 0.425 * 0.425, within(1e-7));
        SurfacePoint p = slice.point(0, 0.37);
        assertThat(p.bevel()).isCloseTo(Math.atan(0.25), within(1e-7));
        assertThat(p.nx() * p.nx() + p.ny() * p.ny() + p.nz() * p.nz()).isCloseTo(1, within(1e-12));
    }

    // closed form: the normal of a sphere points away from its centre
    @Test void theNormalOfASpherePointsAwayFromItsCentre() {
        Loft sphere = Bodies.ellipsoid(1, 1, 1, 41);
        for (double x : new double[] { -0.73, -0.2, 0, 0.41 })
            for (double u : new double[] { 0.1, 0.5, 0.83 }) {
                SurfacePoint p = sphere.at(x).point(0, u);
                assertThat(p.nx()).isCloseTo(p.x(), within(2e-3));
                assertThat(p.ny()).isCloseTo(p.y(), within(2e-3));
                assertThat(p.nz()).isCloseTo(p.z(), within(2e-3));
            }
    }

    // a blunt nose meets the axis square: its normal looks forward
    @Test void theNormalAtABluntNoseLooksForward() {
        SurfacePoint nose = Bodies.ellipsoid(2, 1, 1, 21).at(-2).point(0, 0.3);
        assertThat(nose.nx()).isCloseTo(-1, within(1e-9));
        assertThat(nose.y()).isZero();
    }

    // a cone's point has the normals of its side
    @Test void theNormalAtASharpNoseIsThatOfItsCone() {
        SurfacePoint nose = Bodies.frustum(0, 0.3, 0.4, 5).at(0).point(0, 0.5);
        assertThat(nose.nx()).isCloseTo(-0.6, within(1e-9));
        assertThat(nose.ny()).isCloseTo(0.8, within(1e-9));
    }

    // derivatives against differences of the surface itself
    @Test void derivativesAreThoseOfTheSurface() {
        Loft body = Bodies.ellipsoid(2, 1, 0.7, 15);
        double x = 0.617, u = 0.31, h = 1e-5;
        SurfacePoint p = body.at(x).point(0, u), ahead = body.at(x + h).point(0, u), behind = body.at(x - h).point(0, u);
        assertThat(p.yx()).isCloseTo((ahead.y() - behind.y()) / (2 * h), within(1e-7));
        assertThat(p.zx()).isCloseTo((ahead.z() - behind.z()) / (2 * h), within(1e-7));
        SurfacePoint over = body.at(x).point(0, u + h), under = body.at(x).point(0, u - h);
        assertThat(p.yu()).isCloseTo((over.y() - under.y()) / (2 * h), within(1e-4));
    }

    @Test void theSectionAtAStationIsTheOneGiven() {
        Loft body = Bodies.wigley(10, 1, 0.625, 21);
        Slice midship = body.at(0);
        assertThat(midship.area()).isCloseTo(half(Bodies.wigleySection(0, 10, 1, 0.625)).area(), within(1e-7));
        assertThat(midship.topClosure()).isCloseTo(0.5, within(1e-12));
    }

    // a crease: the two sides of the station have their own slopes; without it they share one
    @Test void aBreakCreasesTheBodyAndAStationDoesNot() {
        List<LoftStation> stations = List.of(new LoftStation(0, half(Bodies.circle(0.3, 1)), false),
                new LoftStation(1, half(Bodies.circle(0.5, 1)), true), new LoftStation(2, half(Bodies.circle(0.4, 1)), false));
        Loft creased = loft(stations);
        assertThat(creased.at(1, Side.FORWARD).point(0, 0.5).yx()).isCloseTo(0.2, within(1e-9));
        assertThat(creased.at(1, Side.AFT).point(0, 0.5).yx()).isCloseTo(-0.1, within(1e-9));
        Loft smooth = loft(stations.stream().map(s -> new LoftStation(s.x(), s.section(), false)).toList());
        assertThat(smooth.at(1, Side.FORWARD).point(0, 0.5).yx())
                .isCloseTo(smooth.at(1, Side.AFT).point(0, 0.5).yx(), within(1e-12));
    }

    // a wedge: knuckled sections against a two-point stem, which is shared out as their girth is
    @Test void aKnifeEdgeTakesTheStretchesOfItsNeighbour() {
        SectionForm stem = SectionForm.Points.of(OutlinePoint.smooth(0, 0), OutlinePoint.smooth(0, 0.3));
        Loft wedge = loft(x -> half(x == 0 ? stem : Bodies.box(0.1 * x, 0, 0.3)), 0, 1);
        assertThat(wedge.stretches()).isEqualTo(3);
        SurfacePoint chine = wedge.at(0).point(1, 0);
        assertThat(chine.z()).isCloseTo(0.3 * 0.1 / 0.5, within(1e-9));
    }

    // a full body's flat tail, given by its two ends, is gone round once
    @Test void aFullBodyMayEndInAnUprightEdge() {
        SectionForm edge = SectionForm.Points.of(OutlinePoint.smooth(0, 0.2), OutlinePoint.smooth(0, 0.8));
        Loft body = loft(x -> full(x == 1 ? edge : Bodies.circle(0.5, 0.5)), 0, 1);
        assertThat(body.at(1).point(0, 0.5).z()).isCloseTo(0.8, within(1e-9));
        assertThat(body.at(1).isDegenerate()).isTrue();
        assertThat(body.at(0.5).area()).isGreaterThan(0.1);
    }

    @Test void sharesOfTheGirthFindTheirPlaceAgain() {
        Slice slice = loft(x -> half(Bodies.box(0.3 + 0.1 * x, 0, 0.4)), 0, 1).at(0.4);
        for (double share : new double[] { 0, 0.1, 0.5, 0.77, 1 })
            assertThat(slice.placeAtShare(share, false).share()).isCloseTo(share, within(1e-9));
    }

    @Test void theKnuckleOfABoxLiesAtItsShareOfTheGirth() {
        SectionForm named = SectionForm.Points.of(OutlinePoint.smooth(0, 0), OutlinePoint.knuckle(0.3, 0).on("chine"),
                OutlinePoint.knuckle(0.3, 0.4), OutlinePoint.smooth(0, 0.4));
        Slice slice = loft(x -> half(named), 0, 1).at(0.5);
        assertThat(slice.share(new GirthPlace.OnLine("chine"), false)).hasValueSatisfying(
                share -> assertThat(share).isCloseTo(0.3, within(1e-9)));
        assertThat(slice.share(new GirthPlace.OnLine("sheer"), false)).isEmpty();
    }

    // on a full body the girth is told from bottom centre on both sides
    @Test void aPortPlaceHasItsShareFromBottomCentreToo() {
        Slice ring = loft(x -> full(Bodies.circle(0.5, 1)), 0, 1).at(0.5);
        SurfacePlace port = ring.placeAtShare(0.25, true);
        assertThat(port.u()).isCloseTo(0.875, within(1e-7));
        assertThat(port.port()).isTrue();
        assertThat(ring.point(0, port.u()).y()).isNegative();
    }

    // a half body's port side is its starboard side's mirror image: the same stretches either way
    @Test void bothSidesOfAHalfBodyHaveTheSameStretches() {
        Slice slice = loft(x -> half(Bodies.box(0.3, 0, 0.4)), 0, 1).at(0.5);
        ShareSet upper = ShareSet.between(0.5, 1);
        assertThat(slice.ranges(upper, true)).isEqualTo(slice.ranges(upper, false)).hasSize(2);
    }

    @Test void anOutlineRunsCounterClockwiseSeenFromAft() {
        assertThat(Bodies.frustum(0.5, 0.3, 0.8, 3).at(0.4).outline(1e-4).area()).isCloseTo(Math.PI * 0.16, within(1e-3));
        assertThat(loft(x -> full(Bodies.circle(0.5, 1)), 0, 1).at(0.2).outline(1e-4).contains(
                new mouldwright.geometry.plane.PlanePoint(-0.2, 1.1))).isTrue();
    }

    // a chine placed on smooth sections borders stretches and leaves the surface as it was
    @Test void aPlacedLineDoesNotChangeACircularBody() {
        Loft plain = loft(x -> half(Bodies.circle(0.3 + 0.1 * x, 1)), 0, 1, 2);
        Loft marked = loft(x -> half(new SectionForm.Marked(Bodies.circle(0.3 + 0.1 * x, 1),
                List.of(new LinePlace.AtGirth("chine", 0.2)))), 0, 1, 2);
        assertThat(marked.at(1.3).area()).isCloseTo(plain.at(1.3).area(), within(1e-8));
        assertThat(marked.at(1.3).girth()).isCloseTo(plain.at(1.3).girth(), within(1e-8));
    }
}
