package mouldwright.geometry.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mouldwright.geometry.frame.Jointing.Join;
import mouldwright.geometry.frame.Jointing.Joint;
import mouldwright.geometry.frame.PlatePart.Kind;
import mouldwright.geometry.frame.PlatePart.Score;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Parts larger than a sheet of 1.22 m by 2.44 m. */
class JointingTest {

    private static final double WIDTH = 1.22, LENGTH = 2.44, SHEET = 0.012;
    private static final Join SCARF = new Join.Scarf(8 * SHEET), STRAP = new Join.Strap(16 * SHEET);

    private static PlatePart plate(double breadth, double height) {
        return PlatePartTest.part(PlatePartTest.box(-breadth / 2, 0, breadth / 2, height), List.of());
    }

    private static List<PlatePart> pieces(PlatePart part, Join join) {
        return PartPieces.of(part, Jointing.joints(part, WIDTH, LENGTH, join).orElseThrow(), join, SHEET);
    }

    @Test void aDiagonalPartFitsWhereItsBoxDoesNot() { // a board 100 mm wide, 2.5 m long, across a sheet whose diagonal is 2.73 m
        double angle = Math.toRadians(20), c = Math.cos(angle), s = Math.sin(angle);
        assertThat(Jointing.fits(PlatePartTest.box(0, 0, 0.1, 2.5), WIDTH, LENGTH)).isTrue();
        assertThat(Jointing.fits(PlatePartTest.box(0, 0, 0.1, 2.8), WIDTH, LENGTH)).isFalse();
        Outline turned = Outline.of(PlatePartTest.box(0, 0, 1.2, 2.4).points().stream().map(p -> new PlanePoint(c * p.y() - s * p.z(), s * p.y() + c * p.z())).toList());
        assertThat(Jointing.fits(turned, WIDTH, LENGTH)).isTrue();
    }

    @Test void aScarfAddsItsLengthOnceAcrossThePlate() { // closed form: 8 to 1 in 12 mm is 96 mm
        List<PlatePart> pieces = pieces(plate(1.6, 2.0), SCARF);
        assertThat(pieces).hasSize(2).extracting(PlatePart::kind).containsOnly(Kind.PLATE);
        assertThat(pieces.stream().mapToDouble(PlatePart::area).sum()).isCloseTo(1.6 * 2.0 + 0.096 * 1.6, within(1e-9));
    }

    @Test void theSlopeOfAScarfIsScoredOnBothPieces() {
        assertThat(pieces(plate(1.6, 2.0), SCARF)).allSatisfy(piece -> {
            List<Double> heights = piece.scores().stream().filter(score -> score.use() == Score.Use.JOINT).map(score -> score.points().getFirst().z()).toList();
            assertThat(heights).isNotEmpty().allSatisfy(z -> assertThat(Math.abs(z - 1.0)).isCloseTo(0.048, within(1e-9)));
        });
    }

    @Test void aButtCutsOffNothingAndHasAStrapAcross() { // closed form: 192 mm across, 12 mm inside both edges
        List<PlatePart> parts = pieces(plate(1.6, 2.0), STRAP);
        assertThat(parts.stream().filter(part -> part.kind() == Kind.PLATE).mapToDouble(PlatePart::area).sum()).isCloseTo(3.2, within(1e-9));
        assertThat(parts.stream().filter(part -> part.kind() == Kind.STRAP)).singleElement().satisfies(strap ->
                assertThat(strap.area()).isCloseTo((1.6 - 2 * SHEET) * 16 * SHEET, within(1e-9)));
    }

    @Test void aRingThatIsCutAcrossHasAStrapOnBothSides() {
        PlatePart ring = PlatePartTest.part(PlatePartTest.box(-0.8, 0, 0.8, 2.0), List.of(PlatePartTest.box(-0.7, 0.1, 0.7, 1.9)));
        List<PlatePart> parts = pieces(ring, STRAP);
        assertThat(parts).filteredOn(part -> part.kind() == Kind.PLATE).hasSize(2);
        assertThat(parts).filteredOn(part -> part.kind() == Kind.STRAP).hasSize(2);
    }

    @Test void aJointKeepsClearOfASlot() {
        PlatePart plain = plate(1.6, 2.0);
        PlatePart slotted = new PlatePart("plate.A", Kind.PLATE, "A", plain.outer(), List.of(new PlatePart.Opening(PlatePart.Opening.Use.SLOT,
                PlatePartTest.box(-0.03, 0.95, 0.03, 1.05))), List.of(), List.of(), List.of(), List.of(), List.of(), "Ply12", SHEET, 1);
        Joint joint = Jointing.joints(slotted, WIDTH, LENGTH, STRAP).orElseThrow().getFirst();
        assertThat(joint.upright()).isFalse();
        assertThat(Math.abs(joint.at() - 1.0)).isGreaterThan(0.05 + 8 * SHEET);
    }

    @Test void eachPieceCarriesWhatOfALineFallsOnIt() { // the centreline of 2 m in two pieces
        PlatePart plain = plate(1.6, 2.0);
        PlatePart scored = new PlatePart("plate.A", Kind.PLATE, "A", plain.outer(), List.of(), List.of(), List.of(new Score(Score.Use.CENTRELINE,
                List.of(new PlanePoint(0, 0), new PlanePoint(0, 2)), false, "centreline")), List.of(), List.of(), List.of(), "Ply12", SHEET, 1);
        List<PlatePart> pieces = pieces(scored, new Join.Strap(0.2)).stream().filter(part -> part.kind() == Kind.PLATE).toList();
        assertThat(pieces).allSatisfy(piece -> assertThat(piece.scores()).filteredOn(score -> score.use() == Score.Use.CENTRELINE).singleElement()
                .satisfies(score -> assertThat(score.points().getFirst().distance(score.points().getLast())).isCloseTo(1.0, within(1e-9))));
    }

    @Test void whatNoEightPiecesFitIsNotJointed() {
        assertThat(Jointing.joints(plate(20, 20), WIDTH, LENGTH, SCARF)).isEmpty();
    }

    @Property(tries = 60) void everyPieceFitsItsSheetAndNothingIsLost(@ForAll @DoubleRange(min = 1.3, max = 4) double breadth,
            @ForAll @DoubleRange(min = 1.3, max = 4) double height) {
        PlatePart part = plate(breadth, height);
        Jointing.joints(part, WIDTH, LENGTH, STRAP).ifPresent(joints -> {
            List<PlatePart> pieces = PartPieces.of(part, joints, STRAP, SHEET).stream().filter(piece -> piece.kind() == Kind.PLATE).toList();
            assertThat(pieces).allSatisfy(piece -> {
                assertThat(Jointing.fits(piece.outer(), WIDTH, LENGTH)).isTrue();
                assertThat(piece.flaw()).isEmpty();
            });
            assertThat(pieces.stream().mapToDouble(PlatePart::area).sum()).isCloseTo(breadth * height, within(1e-6));
        });
    }
}
