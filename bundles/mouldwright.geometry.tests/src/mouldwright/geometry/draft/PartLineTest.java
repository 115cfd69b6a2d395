package mouldwright.geometry.draft;

import static mouldwright.geometry.Bodies.NEVER;
import static mouldwright.geometry.Bodies.half;
import static mouldwright.geometry.Bodies.loft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import mouldwright.geometry.Bodies;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.measure.SurfaceRegion;
import org.junit.jupiter.api.Test;

/** Lines along a part at a share of its girth, where stiffeners run. All by closed forms. */
class PartLineTest {

    private static final Loft CYLINDER = loft(x -> half(Bodies.circle(0.5, 1)), 0, 2);
    private static final GirthBand ABOVE = new GirthBand(new GirthPlace.Broadest(), GirthPlace.TOP);
    private static final GirthBand BELOW = new GirthBand(GirthPlace.BOTTOM, new GirthPlace.Broadest());

    private static DraftOrder order(GirthBand band, Bare bare) {
        return new DraftOrder(new SurfaceRegion(0, 2, band), true, true, true, bare, Pull.UP, 0.03);
    }

    private static void runsAt(Loft body, DraftOrder order, double share, double y, double z) {
        LongLine line = PartLine.along(body, order, share, NEVER).orElseThrow();
        assertThat(line.length()).isCloseTo(2, within(1e-6));
        assertThat(line.points()).allSatisfy(p -> {
            assertThat(p.y()).isCloseTo(y, within(1e-4));
            assertThat(p.z()).isCloseTo(z, within(1e-4));
        });
    }

    @Test void halfWayRoundTheUpperHalfIsItsTop() {
        runsAt(CYLINDER, order(ABOVE, Bare.NONE), 0.5, 0, 1.5);
    }

    @Test void halfWayRoundTheLowerHalfIsItsKeel() {
        runsAt(CYLINDER, order(BELOW, Bare.NONE), 0.5, 0, 0.5);
    }

    @Test void aQuarterOfTheWayRoundTheUpperHalfLiesAtFortyFiveDegrees() {
        runsAt(CYLINDER, order(ABOVE, Bare.NONE), 0.25, 0.5 * Math.sqrt(0.5), 1 + 0.5 * Math.sqrt(0.5));
    }

    @Test void whatIsBareIsNotCounted() { // bare up to the broadest: what is left is the upper half
        Bare bare = new Bare(java.util.List.of(new GirthBand(GirthPlace.BOTTOM, new GirthPlace.AtShare(0.5))));
        runsAt(CYLINDER, order(GirthBand.WHOLE, bare), 0.75, -0.5 * Math.sqrt(0.5), 1 + 0.5 * Math.sqrt(0.5));
    }

    @Test void alongAConeTheLineFollowsTheSlant() {
        Loft cone = Bodies.frustum(0.5, 0.3, 2, 3);
        assertThat(PartLine.along(cone, order(ABOVE, Bare.NONE), 0.5, NEVER).orElseThrow().length()).isCloseTo(Math.hypot(2, 0.2), within(1e-5));
    }

    @Test void aPointedBodyIsFollowedFromPointToPoint() { // half a great circle
        Loft sphere = Bodies.ellipsoid(1, 1, 1, 21);
        DraftOrder upper = new DraftOrder(new SurfaceRegion(-1, 1, ABOVE), true, true, true, Bare.NONE, Pull.UP, 0.03);
        assertThat(PartLine.along(sphere, upper, 0.5, NEVER).orElseThrow().length()).isCloseTo(Math.PI, within(0.005));
    }

    @Test void nothingRunsOverWhatIsBare() {
        assertThat(PartLine.along(CYLINDER, order(BELOW, new Bare(java.util.List.of(GirthBand.WHOLE))), 0.5, NEVER)).isEmpty();
    }
}
