package mouldwright.geometry.draft;

import static mouldwright.geometry.Bodies.NEVER;
import static mouldwright.geometry.Bodies.half;
import static mouldwright.geometry.Bodies.loft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import mouldwright.geometry.Bodies;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.measure.SurfaceRegion;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** The board between a parting line and the edge of its flange, 100 mm out. All by closed forms. */
class PartingStripTest {

    private static final double FLANGE = 0.1;
    private static final GirthBand ABOVE = new GirthBand(new GirthPlace.Broadest(), GirthPlace.TOP);

    private static List<PartingStrip> boards(Loft body) {
        DraftOrder order = new DraftOrder(new SurfaceRegion(body.startX(), body.endX(), ABOVE), true, true, true, Bare.NONE, Pull.UP, 0.03);
        return PartEdges.along(body, order, NEVER).stream().map(edge -> PartingStrip.of(edge.line(), Pull.UP, FLANGE).orElseThrow()).toList();
    }

    /** A line along a wall that stands at y = 1 and faces starboard. */
    private static PartingStrip onAWall(DoubleUnaryOperator height) {
        List<SurfacePoint> points = new ArrayList<>();
        for (int i = 0; i <= 200; i++)
            points.add(new SurfacePoint(i / 200.0, 1, height.applyAsDouble(i / 200.0), 0, 1, 0, 0, 1, 0, 0));
        return PartingStrip.of(LongLine.through(points), Pull.UP, FLANGE).orElseThrow();
    }

    @Test void theBoardOfACylinderIsARectangle() {
        assertThat(boards(loft(x -> half(Bodies.circle(0.5, 1)), 0, 2))).hasSize(2).allSatisfy(board -> {
            assertThat(board.length()).isCloseTo(2, within(1e-9));
            assertThat(board.area()).isCloseTo(2 * FLANGE, within(1e-6));
            assertThat(board.standOff()).isCloseTo(0, within(1e-6));
        });
    }

    @Test void theBoardOfAConeIsAsLongAsItsSlant() { // sqrt(0.8^2 + 0.2^2)
        assertThat(boards(Bodies.frustum(0.5, 0.3, 0.8, 3))).hasSize(2).allSatisfy(board -> {
            assertThat(board.length()).isCloseTo(Math.hypot(0.8, 0.2), within(1e-6));
            assertThat(board.area()).isCloseTo(Math.hypot(0.8, 0.2) * FLANGE, Percentage.withPercentage(0.01));
        });
    }

    @Test void theBoardsOfASphereAreTwoHalvesOfARing() { // pi / 2 ((r + w)^2 - r^2)
        assertThat(boards(Bodies.ellipsoid(1, 1, 1, 21))).hasSize(2).allSatisfy(board -> {
            assertThat(board.length()).isCloseTo(Math.PI, Percentage.withPercentage(0.1));
            assertThat(board.area()).isCloseTo(Math.PI / 2 * (1.1 * 1.1 - 1), Percentage.withPercentage(0.5));
            assertThat(board.standOff()).isCloseTo(0, within(1e-4));
            assertThat(board.crowded()).isFalse();
        });
    }

    @Test void aStepDownTheWallIsLaidOutByItsLengthAndFarFromAPlane() { // z = x^2: length by calculus; a level flange all along
        PartingStrip board = onAWall(x -> x * x);
        double length = Math.sqrt(5) / 2 + Math.log(2 + Math.sqrt(5)) / 4;
        assertThat(board.length()).isCloseTo(length, Percentage.withPercentage(0.01));
        assertThat(board.area()).isCloseTo(length * FLANGE, Percentage.withPercentage(0.01));
        assertThat(board.edge()).allSatisfy(p -> assertThat(p.z()).isCloseTo(FLANGE, within(1e-9)));
        assertThat(board.standOff()).isBetween(0.08, 0.2);
    }

    @Test void anInclinedLineLiesInAPlaneAllTheSame() {
        assertThat(onAWall(x -> 0.3 * x).standOff()).isCloseTo(0, within(1e-9));
    }

    @Test void aLineThatSwaysAlittleStandsOffItsMeanPlaneByHalfItsSway() { // a cosine of 5 mm over two waves: its mean plane is level
        assertThat(onAWall(x -> 0.005 * Math.cos(4 * Math.PI * x)).standOff()).isCloseTo(0.005, Percentage.withPercentage(3));
    }

    @Test void aHollowBendCloserThanTheFlangeCrowdsItsEdge() { // a notch of 60 mm radius in plan, flange 100 mm to its middle and past it
        List<SurfacePoint> points = new ArrayList<>();
        for (int i = 0; i <= 60; i++) {
            double a = Math.PI * i / 60;
            points.add(new SurfacePoint(0.06 * Math.cos(a), 0.06 * Math.sin(a), 0, -Math.cos(a), -Math.sin(a), 0, 0, 0, 0, 0));
        }
        assertThat(PartingStrip.of(LongLine.through(points), Pull.UP, FLANGE).orElseThrow().crowded()).isTrue();
        assertThat(PartingStrip.of(LongLine.through(points), Pull.UP, 0.03).orElseThrow().crowded()).isFalse();
    }

    @Test void aLineWithoutLengthHasNoBoard() {
        SurfacePoint p = new SurfacePoint(0, 0, 0, 0, 1, 0, 0, 1, 0, 0);
        assertThat(PartingStrip.of(LongLine.through(List.of(p, p)), Pull.UP, FLANGE)).isEmpty();
    }
}
