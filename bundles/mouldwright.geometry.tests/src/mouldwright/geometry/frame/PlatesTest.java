package mouldwright.geometry.frame;

import static mouldwright.geometry.Bodies.half;
import static mouldwright.geometry.Bodies.loft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mouldwright.geometry.Bodies;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.offset.BuildUp;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.SectionForm;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Plates cut from a cone, whose closed forms are known. */
class PlatesTest {
    private static final double SKIN = 0.003, SHEET = 0.012;
    private static final double TAN = 0.25, COS = 1 / Math.hypot(1, TAN);
    private static final Loft NARROWING = Bodies.frustum(0.5, 0.3, 0.8, 3);

    private static PlateResult make(Loft body, double x, Side side, EdgeForm edges) {
        return Plates.make(body, new PlateOrder(x, SHEET, side, edges, BuildUp.uniform(SKIN, Bare.NONE)));
    }

    private static Plate cut(Loft body, double x, Side side, EdgeForm edges) {
        return ((PlateResult.Cut) make(body, x, side, edges)).plate();
    }

    private static double circle(double radius) {
        return Math.PI * radius * radius;
    }

    // closed form: on a cone the skin measures t / cos(bevel) in the plane
    @Test void coneFrustumPlateIsSmallerByTheSkinOverTheCosineOfItsBevel() {
        Plate plate = cut(NARROWING, 0.4, Side.FORWARD, EdgeForm.SQUARE);
        assertThat(plate.stationFace().area()).isCloseTo(circle(0.4 - SKIN / COS), Percentage.withPercentage(0.01));
    }

    // closed form: a square edge follows the smaller face, here the after one
    @Test void aSquareEdgeNeverStandsProud() {
        Plate aft = cut(NARROWING, 0.4, Side.AFT, EdgeForm.SQUARE), forward = cut(NARROWING, 0.4, Side.FORWARD, EdgeForm.SQUARE);
        assertThat(aft.cut().area()).isCloseTo(circle(0.4 - SHEET * TAN - SKIN / COS), Percentage.withPercentage(0.01));
        assertThat(forward.cut().area()).isCloseTo(circle(0.4 - SKIN / COS), Percentage.withPercentage(0.01));
        assertThat(aft.bevelLine()).isEmpty();
    }

    // closed form: the gap a square edge leaves is T tan(bevel) in the plane, T sin(bevel) along the normal
    @Test void aSquareEdgeLeavesItsGap() {
        Plate plate = cut(NARROWING, 0.4, Side.FORWARD, EdgeForm.SQUARE);
        assertThat(plate.largestBevel()).isCloseTo(Math.atan(TAN), within(1e-6));
        assertThat(plate.gapInPlane()).isCloseTo(SHEET * TAN, within(1e-7));
        assertThat(plate.gapAlongNormal()).isCloseTo(SHEET * TAN * COS, within(1e-7));
    }

    // closed form: a bevelled edge is cut to the larger face and planed to the smaller
    @Test void aBevelledEdgeIsCutToTheLargerFaceAndPlanedToTheOther() {
        Plate plate = cut(NARROWING, 0.4, Side.FORWARD, EdgeForm.BEVELLED);
        assertThat(plate.cut().area()).isCloseTo(circle(0.4 + SHEET * TAN - SKIN / COS), Percentage.withPercentage(0.01));
        assertThat(plate.bevelLine().orElseThrow().area()).isCloseTo(circle(0.4 - SKIN / COS), Percentage.withPercentage(0.01));
    }

    @Test void theBevelTableOfAConeHasOneAngle() {
        assertThat(cut(NARROWING, 0.4, Side.FORWARD, EdgeForm.BEVELLED).bevels())
                .hasSize(5).allSatisfy(e -> assertThat(e.angle()).isCloseTo(Math.atan(TAN), within(1e-6)));
    }

    // common practice: plates stand inside the body at its ends and toward the larger section between
    @Test void platesStandTowardTheLargerNeighbour() {
        assertThat(Plates.sides(NARROWING, List.of(0.0, 0.3, 0.5, 0.8)))
                .containsExactly(Side.AFT, Side.FORWARD, Side.FORWARD, Side.FORWARD);
        assertThat(Plates.sides(Bodies.frustum(0.3, 0.5, 0.8, 3), List.of(0.0, 0.3, 0.5, 0.8)))
                .containsExactly(Side.AFT, Side.AFT, Side.AFT, Side.FORWARD);
    }

    @Test void aTieStandsAft() {
        Loft prism = loft(x -> half(Bodies.circle(0.3, 1)), 0, 1, 2);
        assertThat(Plates.sides(prism, List.of(0.0, 1.0, 2.0))).containsExactly(Side.AFT, Side.AFT, Side.FORWARD);
    }

    // arithmetic of the frame: L - T where a plate stands into the bay
    @Test void theClearLengthLosesThePlatesThatStandInTheBay() {
        assertThat(Plates.clearLength(0.3, 0.012, Side.AFT, 0.018, Side.FORWARD)).isCloseTo(0.27, within(1e-12));
        assertThat(Plates.clearLength(0.3, 0.012, Side.FORWARD, 0.018, Side.AFT)).isCloseTo(0.3, within(1e-12));
        assertThat(Plates.clearLength(0.3, 0.012, Side.AFT, 0.018, Side.AFT)).isCloseTo(0.288, within(1e-12));
    }

    // the first plate of a body that narrows going aft has its larger face outside
    @Test void anEndPlateWithItsLargerFaceOutsideIsTold() {
        assertThat(cut(NARROWING, 0, Side.AFT, EdgeForm.SQUARE).outerFaceLarger()).isTrue();
        assertThat(cut(Bodies.frustum(0.3, 0.5, 0.8, 3), 0, Side.AFT, EdgeForm.SQUARE).outerFaceLarger()).isFalse();
        assertThat(cut(loft(x -> half(Bodies.circle(0.3, 1)), 0, 1), 0, Side.AFT, EdgeForm.SQUARE).outerFaceLarger()).isFalse();
    }

    @Test void aPlateThinnerThanItsSkinVanishes() {
        Loft thin = loft(x -> half(Bodies.box(0.0025, 0, 0.4)), 0, 1);
        assertThat(make(thin, 0.5, Side.AFT, EdgeForm.SQUARE)).isEqualTo(new PlateResult.Vanished(0.5));
    }

    // a dumb-bell whose neck is thinner than two skins
    @Test void aPlateWithANeckThinnerThanItsSkinFallsInTwo() {
        SectionForm dumbBell = SectionForm.Points.of(OutlinePoint.smooth(0, 0), OutlinePoint.knuckle(0.2, 0),
                OutlinePoint.knuckle(0.2, 0.2), OutlinePoint.knuckle(0.0025, 0.2), OutlinePoint.knuckle(0.0025, 0.4),
                OutlinePoint.knuckle(0.1, 0.4), OutlinePoint.knuckle(0.1, 0.5), OutlinePoint.smooth(0, 0.5));
        assertThat(make(loft(x -> half(dumbBell), 0, 1), 0.5, Side.AFT, EdgeForm.SQUARE))
                .isInstanceOfSatisfying(PlateResult.Split.class, split -> {
                    assertThat(split.pieces()).hasSize(2);
                    assertThat(split.pieces().getFirst().area()).isCloseTo(0.394 * 0.194, within(1e-4));
                });
    }

    @Test void aNoseBearsNoPlate() {
        assertThat(make(Bodies.ellipsoid(1, 1, 1, 21), -1, Side.AFT, EdgeForm.SQUARE)).isEqualTo(new PlateResult.NoArea(-1));
        assertThat(make(Bodies.wigley(10, 1, 0.625, 21), -5, Side.AFT, EdgeForm.SQUARE)).isEqualTo(new PlateResult.NoArea(-5));
    }

    // a bare bottom does not count for the gap: only the sides of a box that rises going aft are level there
    @Test void theBevelOfABareStretchDoesNotCount() {
        Loft rising = loft(x -> half(SectionForm.Points.of(OutlinePoint.smooth(0, 0.2 * x),
                OutlinePoint.knuckle(0.3, 0.2 * x).afterBare(), OutlinePoint.knuckle(0.3, 0.5), OutlinePoint.smooth(0, 0.5))), 0, 1);
        assertThat(Plates.largestBevel(rising, 0.5, Side.AFT, Bare.NONE)).isCloseTo(0, within(1e-9));
    }

    // shrink: the body is scaled before the skin is taken off
    @Test void thePlateOfAScaledBodyLosesTheUnscaledSkin() {
        Plate plate = cut(NARROWING.scaled(1 / 0.997), 0.4 / 0.997, Side.FORWARD, EdgeForm.SQUARE);
        assertThat(plate.stationFace().area()).isCloseTo(circle(0.4 / 0.997 - SKIN / COS), Percentage.withPercentage(0.01));
    }
}
