package mouldwright.geometry.draft;

import static mouldwright.geometry.Bodies.NEVER;
import static mouldwright.geometry.Bodies.full;
import static mouldwright.geometry.Bodies.half;
import static mouldwright.geometry.Bodies.loft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.Bodies;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.SurfacePlace;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.measure.SurfaceRegion;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.Section;
import mouldwright.geometry.section.SectionForm;
import org.junit.jupiter.api.Test;

/** Where the parts of a mould meet and where they end. All by closed forms. */
class PartEdgesTest {
    private static final double LIMIT = Math.toRadians(2);
    private static final Loft CYLINDER = loft(x -> half(Bodies.circle(0.5, 1)), 0, 2);
    private static final GirthBand ABOVE = new GirthBand(new GirthPlace.Broadest(), GirthPlace.TOP);
    private static final GirthBand BELOW = new GirthBand(GirthPlace.BOTTOM, new GirthPlace.Broadest());

    private static DraftOrder order(GirthBand band, boolean starboard, boolean port, Bare bare, Pull pull) {
        return new DraftOrder(new SurfaceRegion(0, 2, band), starboard, port, true, bare, pull, LIMIT);
    }

    private static List<PartEdge> edges(Loft body, DraftOrder order) {
        return PartEdges.along(body, order, NEVER);
    }

    private static double length(List<PartEdge> edges, PartEdge.Kind kind) {
        return edges.stream().filter(edge -> edge.kind() == kind).mapToDouble(edge -> edge.line().length()).sum();
    }

    @Test void theUpperHalfOfACylinderIsPartedAlongBothSides() {
        List<PartEdge> edges = edges(CYLINDER, order(ABOVE, true, true, Bare.NONE, Pull.UP));
        assertThat(edges).hasSize(2).allSatisfy(edge -> {
            assertThat(edge.kind()).isEqualTo(PartEdge.Kind.PARTING);
            assertThat(edge.line().length()).isCloseTo(2, within(1e-9));
            assertThat(edge.line().points()).allSatisfy(p -> assertThat(p.z()).isCloseTo(1, within(1e-4)));
        });
        assertThat(edges).extracting(PartEdge::port).containsExactlyInAnyOrder(false, true);
    }

    @Test void aPieceThatGoesAllRoundIsPartedNowhere() {
        assertThat(edges(CYLINDER, order(GirthBand.WHOLE, true, true, Bare.NONE, Pull.UP))).isEmpty();
    }

    @Test void aHalfToPortIsPartedAlongTheMiddle() {
        List<PartEdge> edges = edges(CYLINDER, order(GirthBand.WHOLE, false, true, Bare.NONE, Pull.PORT));
        assertThat(length(edges, PartEdge.Kind.PARTING)).isCloseTo(4, within(1e-9));
        assertThat(edges).allSatisfy(edge -> assertThat(edge.line().points()).allSatisfy(p -> assertThat(p.y()).isCloseTo(0, within(1e-9))));
    }

    @Test void whereTheBottomIsBareTheMouldEnds() {
        Bare bare = new Bare(List.of(new GirthBand(GirthPlace.BOTTOM, new GirthPlace.AtShare(0.25))));
        List<PartEdge> edges = edges(CYLINDER, order(GirthBand.WHOLE, true, true, bare, Pull.UP));
        assertThat(length(edges, PartEdge.Kind.PARTING)).isZero();
        assertThat(length(edges, PartEdge.Kind.OPEN)).isCloseTo(4, within(1e-9));
    }

    // the edge runs down the slope of the cone: sqrt(h^2 + (R - r)^2) on each side, where a bounding box says h
    @Test void thePartingLineOfAConeFollowsItsSlope() {
        Loft cone = Bodies.frustum(1, 0.2, 2, 5);
        assertThat(length(edges(cone, order(ABOVE, true, true, Bare.NONE, Pull.UP)), PartEdge.Kind.PARTING))
                .isCloseTo(2 * Math.hypot(2, 0.8), within(1e-4));
    }

    @Test void anUprightWallBelongsToTheUpperHalf() {
        Loft box = loft(x -> half(Bodies.box(0.4, 0, 0.3)), 0, 2);
        PartAreas areas = new PartAreas(box, Bare.NONE, NEVER);
        assertThat(areas.area(order(ABOVE, true, true, Bare.NONE, Pull.UP), 0, 2).value()).isCloseTo(2 * (2 * 0.3 + 0.8), within(1e-9));
        assertThat(areas.area(order(BELOW, true, true, Bare.NONE, Pull.DOWN), 0, 2).value()).isCloseTo(2 * 0.8, within(1e-9));
    }

    @Test void twoHalvesShareTheFaceBetweenThem() {
        PartAreas areas = new PartAreas(CYLINDER, Bare.NONE, NEVER);
        List<DraftOrder> halves = List.of(order(ABOVE, true, true, Bare.NONE, Pull.UP), order(BELOW, true, true, Bare.NONE, Pull.DOWN));
        assertThat(areas.uncovered(halves).value()).isCloseTo(0, within(1e-9));
        assertThat(areas.doubled(halves).value()).isCloseTo(0, within(1e-9));
    }

    @Test void twoUpperHalvesLieOverEachOtherAndLeaveTheLowerOut() {
        PartAreas areas = new PartAreas(CYLINDER, Bare.NONE, NEVER);
        List<DraftOrder> uppers = List.of(order(ABOVE, true, true, Bare.NONE, Pull.UP), order(ABOVE, true, true, Bare.NONE, Pull.UP));
        assertThat(areas.uncovered(uppers).value()).isCloseTo(Math.PI, within(1e-3)); // half of 2 pi r l
        assertThat(areas.doubled(uppers).value()).isCloseTo(Math.PI, within(1e-3));
    }

    @Test void theOutlineOfAnOpenEndIsAnEdge() {
        double round = PartEdges.round(CYLINDER, order(GirthBand.WHOLE, true, true, Bare.NONE, Pull.UP), 0, Side.AFT, PartEdge.Kind.OPEN).stream()
                .mapToDouble(edge -> edge.line().length()).sum();
        assertThat(round).isCloseTo(Math.PI, within(1e-3));
    }

    /** An ellipse, 0.5 by 0.2, leaning over by an angle. */
    private static Section leaning(double angle) {
        List<OutlinePoint> points = new ArrayList<>();
        for (int i = 0; i <= 48; i++) {
            double t = seam(angle) + 2 * Math.PI * i / 48;
            double y = 0.5 * Math.cos(t) * Math.cos(angle) - 0.2 * Math.sin(t) * Math.sin(angle);
            double z = 0.5 * Math.cos(t) * Math.sin(angle) + 0.2 * Math.sin(t) * Math.cos(angle);
            points.add(OutlinePoint.smooth(i == 0 || i == 48 ? 0 : y, 1 + z));
        }
        return full(new SectionForm.Points(points));
    }

    /** Where the leaning ellipse crosses y = 0 below: 0.5 cos t cos a = 0.2 sin t sin a. */
    private static double seam(double angle) {
        return Math.atan2(0.5 * Math.cos(angle), 0.2 * Math.sin(angle)) - Math.PI;
    }

    // closed form: the highest place of an ellipse (a, b) leaning by w lies at y = (a^2 - b^2) sin w cos w / z, z = sqrt(a^2 sin^2 w + b^2 cos^2 w)
    @Test void theHighestPlaceOfALeaningSectionLiesOffTheMiddle() {
        double w = Math.toRadians(20);
        double z = Math.sqrt(0.25 * Math.sin(w) * Math.sin(w) + 0.04 * Math.cos(w) * Math.cos(w));
        Loft body = loft(x -> leaning(w), 0, 2);
        SurfacePlace place = body.at(1).highest();
        SurfacePoint p = body.at(1).point(place.stretch(), place.u());
        assertThat(p.z() - 1).isCloseTo(z, within(1e-4));
        assertThat(p.y()).isCloseTo((0.25 - 0.04) * Math.sin(w) * Math.cos(w) / z, within(2e-3));
    }

    // parted at top centre, half the girth from bottom centre, the same body would be caught
    @Test void aBodyThatIsNotAlikeOnBothSidesIsPartedWhereTheNormalStandsSquareToThePull() {
        Loft body = loft(x -> leaning(Math.toRadians(20)), 0, 2);
        DraftOrder parted = order(GirthBand.WHOLE, false, true, Bare.NONE, Pull.PORT);
        DraftOrder middle = new DraftOrder(parted.region(), false, true, Bare.NONE, Pull.PORT, LIMIT);
        assertThat(Drafts.examine(body, parted, NEVER).undercut().value()).isLessThan(1e-4);
        assertThat(Drafts.examine(body, middle, NEVER).undercut().value()).isGreaterThan(0.1);
        assertThat(length(edges(body, parted), PartEdge.Kind.PARTING)).isCloseTo(4, within(1e-6));
    }

    // sphere of radius R pulled up: undercut 2 pi R^2, low zone 2 pi R^2 sin(limit) (Archimedes); the loft is within 0.3 %
    @Test void aSpherePulledUpIsHalfCaught() {
        Loft sphere = Bodies.ellipsoid(1, 1, 1, 21);
        DraftOrder order = new DraftOrder(new SurfaceRegion(-1, 1, GirthBand.WHOLE), true, true, Bare.NONE, Pull.UP, LIMIT);
        DraftReport report = Drafts.examine(sphere, order, NEVER);
        assertThat(report.undercut().value()).isCloseTo(2 * Math.PI, within(0.003 * 2 * Math.PI));
        assertThat(report.lowAtParting().value() + report.lowElsewhere().value()).isCloseTo(2 * Math.PI * Math.sin(LIMIT), within(0.01));
    }

    // cone of half angle w pulled toward its point: sin(draft) = sin(w) everywhere
    @Test void aSlimConeDrawsByItsHalfAngle() {
        double w = Math.toRadians(1);
        Loft cone = Bodies.frustum(0.5, 0.5 - 2 * Math.tan(w), 2, 3);
        DraftReport report = Drafts.examine(cone, order(GirthBand.WHOLE, true, true, Bare.NONE, Pull.AFT), NEVER);
        double lateral = Math.PI * (1 - 2 * Math.tan(w)) * 2 / Math.cos(w);
        assertThat(report.lowElsewhere().value()).isCloseTo(lateral, within(1e-3 * lateral));
        assertThat(report.least().orElseThrow().angle()).isCloseTo(w, within(1e-4));
    }
}
