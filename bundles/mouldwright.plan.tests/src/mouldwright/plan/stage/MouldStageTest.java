package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static mouldwright.plan.stage.Plans.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import mouldwright.plan.Assumption;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.OrderEntry;
import mouldwright.plan.PieceEntry;
import mouldwright.plan.PlanFault;
import mouldwright.plan.PotEntry;
import mouldwright.plan.spec.Coating;
import mouldwright.plan.spec.Hardener;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Place;
import mouldwright.plan.spec.Schedule;
import mouldwright.units.Dimension;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** The mould of a cylinder 300 mm in radius and 1.2 m long, unless a test says otherwise. Closed forms, unless it names a source. */
class MouldStageTest {

    private static final double GIRTH = 2 * Math.PI * 0.3;
    private static final double LENGTH = 1.2;
    private static final Mould.Part UPPER = Specs.half("Upper", Mould.Pull.UP);
    private static final Mould.Part LOWER = Specs.half("Lower", Mould.Pull.DOWN);
    private static final Mould.Part PORT = Specs.half("Port", Mould.Pull.PORT);
    private static final Mould.Part STARBOARD = Specs.half("Starboard", Mould.Pull.STARBOARD);

    private static Specs cylinder(Mould.Part... parts) {
        return Specs.cylinder().mould(Specs.mould(Specs.schedule(Specs.csm450()), parts));
    }

    @Test void twoHalvesCoverTheWholeFace() {
        BuildPlan plan = plan(cylinder(UPPER, LOWER));
        assertThat(value(plan, "mould.area")).isCloseTo(GIRTH * LENGTH, Percentage.withPercentage(0.01));
        assertThat(value(plan, "mould.uncovered.area")).isCloseTo(0, within(1e-9));
        assertThat(value(plan, "mould.piece.Upper.area")).isCloseTo(GIRTH * LENGTH / 2, Percentage.withPercentage(0.1));
    }

    @Test void flangesStandOnBothHalvesAndRoundTheOpenEnds() { // 75 mm x (2 x 2 lines of 1.2 m + 2 ends)
        BuildPlan plan = plan(cylinder(UPPER, LOWER));
        assertThat(value(plan, "mould.parting.length")).isCloseTo(2 * LENGTH, within(1e-6));
        assertThat(value(plan, "mould.trim.length")).isCloseTo(2 * GIRTH, Percentage.withPercentage(0.1));
        assertThat(value(plan, "mould.flange.area")).isCloseTo(0.075 * (4 * LENGTH + 2 * GIRTH), Percentage.withPercentage(0.1));
    }

    @Test void halvesToPortAndStarboardMeetInTheMiddle() {
        BuildPlan plan = plan(cylinder(PORT, STARBOARD));
        assertThat(value(plan, "mould.parting.length")).isCloseTo(2 * LENGTH, within(1e-6));
        assertThat(value(plan, "mould.undercut.area")).isCloseTo(0, within(1e-6));
    }

    @Test void theStripAtThePartingLineIsToldApart() { // r x limit on either side of both lines; outside it the draft is the limit
        BuildPlan plan = plan(cylinder(UPPER, LOWER));
        double limit = Math.toRadians(2);
        assertThat(value(plan, "mould.draft.touching.area")).isCloseTo(4 * 0.3 * limit * LENGTH, Percentage.withPercentage(1));
        assertThat(value(plan, "mould.draft.low.area")).isCloseTo(0, within(1e-9));
        assertThat(value(plan, "mould.draft.min")).isCloseTo(limit, within(1e-4));
    }

    @Test void aCylinderInOnePieceIsHalfUndercut() {
        BuildPlan plan = plan(cylinder());
        assertThat(value(plan, "mould.undercut.area")).isCloseTo(GIRTH * LENGTH / 2, Percentage.withPercentage(0.1));
        assertThat(value(plan, "mould.draft.min")).isCloseTo(-Math.PI / 2, within(1e-3));
        assertThat(plan.assumed()).extracting(Assumption::name).contains("parts of the mould");
    }

    @Test void aPullThatUndercutsEverythingGivesFiguresAndNoCrash() {
        BuildPlan plan = plan(cylinder(Specs.half("Wrong", new Mould.Reach.Below(new Place.AtShare(0.5)), Mould.Pull.UP)));
        assertThat(value(plan, "mould.undercut.area")).isCloseTo(value(plan, "mould.area"), Percentage.withPercentage(0.01));
        assertThat(value(plan, "mould.uncovered.area")).isCloseTo(GIRTH * LENGTH / 2, Percentage.withPercentage(0.01));
    }

    @Test void aHalfMayBePartedAtAnyShareOfTheGirth() {
        Place quarter = new Place.AtShare(0.25);
        BuildPlan plan = plan(cylinder(Specs.half("A", new Mould.Reach.Above(quarter), Mould.Pull.UP), Specs.half("B", new Mould.Reach.Below(quarter), Mould.Pull.DOWN)));
        assertThat(value(plan, "mould.piece.A.area")).isCloseTo(0.75 * GIRTH * LENGTH, Percentage.withPercentage(0.01));
        assertThat(value(plan, "mould.undercut.area")).isCloseTo(0.25 * GIRTH * LENGTH, Percentage.withPercentage(0.5));
        assertThat(value(plan, "mould.parting.length")).isCloseTo(2 * LENGTH, within(1e-6));
    }

    @Test void mouldedEndsArePartedToo() { // a diameter over each end, and no open edge is left
        BuildPlan plan = plan(cylinder(UPPER, LOWER).mouldedEnds());
        assertThat(value(plan, "mould.area")).isCloseTo(GIRTH * LENGTH + 2 * Math.PI * 0.09, Percentage.withPercentage(0.01));
        assertThat(value(plan, "mould.parting.length")).isCloseTo(2 * LENGTH + 2 * 0.6, within(1e-3));
        assertThat(value(plan, "mould.trim.length")).isZero();
    }

    @Test void aFlatEndAlongThePullHasNoDraft() {
        BuildPlan plan = plan(cylinder(PORT, STARBOARD).mouldedEnds());
        assertThat(value(plan, "mould.draft.min")).isCloseTo(0, within(1e-12));
        assertThat(value(plan, "mould.draft.low.area")).isCloseTo(2 * Math.PI * 0.09, Percentage.withPercentage(0.1));
    }

    @Test void halvesPulledForwardAndAftMeetAtTheLargestSection() { // two cones, base to base: parted round the base
        Specs spindle = new Specs().station("A", 0, Specs.circle(0.1, 0.5)).station("B", 0.5, Specs.circle(0.3, 0.5)).station("C", 1.0, Specs.circle(0.1, 0.5));
        BuildPlan plan = plan(spindle.mould(Specs.mould(Specs.schedule(Specs.csm450()), Specs.half("Nose", Mould.Pull.FORWARD), Specs.half("Tail", Mould.Pull.AFT))));
        assertThat(value(plan, "mould.parting.length")).isCloseTo(GIRTH, Percentage.withPercentage(0.1));
        assertThat(value(plan, "mould.uncovered.area")).isCloseTo(0, within(1e-9));
        assertThat(value(plan, "mould.undercut.area")).isCloseTo(0, within(1e-6));
    }

    @Test void whereTheBottomIsBareAReturnFlangeStands() {
        BuildPlan plan = plan(cylinder().bare(0, 0.5));
        assertThat(value(plan, "mould.trim.length")).isCloseTo(2 * LENGTH + GIRTH, Percentage.withPercentage(0.1));
        assertThat(value(plan, "mould.parting.length")).isZero();
        assertThat(value(plan, "mould.undercut.area")).isCloseTo(0, within(1e-6));
    }

    @Test void theMouldRunsPastTheOpenEdge() {
        assertThat(value(plan(cylinder(UPPER, LOWER).runOut(0.05)), "mould.runout.area")).isCloseTo(0.05 * 2 * GIRTH, Percentage.withPercentage(0.1));
    }

    @Test void thePartIsTrimmedInsideTheRunOut() { // 50 mm of run-out, trimmed at 10: 40 mm round both ends are cut off
        BuildPlan plan = plan(cylinder(UPPER, LOWER).runOut(0.05).trim(0.01));
        assertThat(value(plan, "mould.trim.distance")).isCloseTo(0.01, within(1e-12));
        assertThat(value(plan, "mould.trim.waste.area")).isCloseTo(0.04 * 2 * GIRTH, Percentage.withPercentage(0.1));
        assertThat(value(plan, "mould.runout.area")).isCloseTo(value(plan(cylinder(UPPER, LOWER).runOut(0.05)), "mould.runout.area"), within(1e-12));
    }

    @Test void aTrimLinePastTheRunOutIsAFault() {
        assertThat(plan(cylinder(UPPER, LOWER).runOut(0.05).trim(0.1)).faults()).singleElement().satisfies(fault -> {
            assertThat(fault.kind()).isEqualTo(PlanFault.Kind.FIGURE);
            assertThat(fault.figure().orElseThrow().value()).isCloseTo(0.1, within(1e-12));
            assertThat(fault.limit().orElseThrow().value()).isCloseTo(0.05, within(1e-12));
        });
    }

    @Test void theMouldIsCutHalfByHalfAndPlyByPly() { // a face, two strips of flange and two of return flange for each half and ply
        BuildPlan plan = plan(Specs.cylinder().mould(Specs.mould(Specs.schedule(Specs.csm450(), Specs.csm450()), UPPER, LOWER)));
        List<PieceEntry> pieces = plan.pieces().stream().filter(piece -> piece.laminate().equals("mould")).toList();
        assertThat(pieces).hasSize((int) value(plan, "mould.mat.Csm450.pieces"));
        assertThat(pieces).filteredOn(piece -> piece.where().contains("half Upper")).hasSize(pieces.size() / 2);
        assertThat(pieces).extracting(PieceEntry::piece).doesNotHaveDuplicates();
        double longest = pieces.stream().mapToDouble(piece -> piece.along() + piece.length()).max().orElseThrow();
        assertThat(longest).isCloseTo(value(plan, "mould.mat.Csm450.length"), Percentage.withPercentage(1e-6));
    }

    @Test void halvesPartedAlongACylinderAreLaidUpAgainstTwoFlatBoards() { // 1.2 m x 75 mm each
        BuildPlan plan = plan(cylinder(UPPER, LOWER));
        assertThat(value(plan, "mould.board.area")).isCloseTo(2 * LENGTH * 0.075, Percentage.withPercentage(0.01));
        assertThat(value(plan, "mould.board.standoff")).isCloseTo(0, within(1e-6));
        assertThat(plan.measurements().find(MouldMeasures.class).orElseThrow().boards()).extracting(board -> board.part().name().orElse("")).containsExactly("Upper", "Upper");
    }

    @Test void aMouldInOnePieceHasNoPartingBoard() {
        assertThat(plan(cylinder()).quantity("mould.board.area")).isEmpty();
    }

    private static BuildPlan gelCoated(double shop) {
        Coating plain = Specs.gelCoat(0.4e-3, 0.95);
        Hardener hardener = Specs.resin().hardener().orElseThrow();
        Coating cured = new Coating(plain.name(), plain.density(), plain.wet(), plain.dry(), plain.transfer(), plain.coverage(), plain.styrene(), plain.recoat(),
                Optional.of(new Coating.Curing(hardener, Specs.given("least", Dimension.RATIO, 0.015), Specs.given("most", Dimension.RATIO, 0.025))), plain.stock());
        Schedule schedule = new Schedule("Shell", Specs.resin(), List.of(new Schedule.Layer.Coat(cured, Specs.LIBRARY), new Schedule.Layer.Ply(Specs.csm450(), Specs.LIBRARY)), Specs.LIBRARY);
        return plan(Specs.cylinder().shop(shop).mould(Specs.mould(schedule, UPPER, LOWER)));
    }

    @Test void gelCoatIsCatalysedByTheGuideWithinItsLimits() { // East Coast Fibreglass, catalyst addition chart: 2 % at 18 degC, 1 % at 22 degC
        BuildPlan cool = gelCoated(18);
        assertThat(value(cool, "mould.coat.ToolingGel.catalyst.mass")).isCloseTo(0.02 * value(cool, "mould.coat.ToolingGel.mass"), Percentage.withPercentage(1e-6));
        BuildPlan warm = gelCoated(22);
        assertThat(value(warm, "mould.coat.ToolingGel.catalyst.mass")).isCloseTo(0.015 * value(warm, "mould.coat.ToolingGel.mass"), Percentage.withPercentage(1e-6));
        assertThat(value(warm, "mould.coat.ToolingGel.catalyst.volume")).isCloseTo(value(warm, "mould.coat.ToolingGel.catalyst.mass") / 1160, Percentage.withPercentage(1e-6));
    }

    @Test void theGelCoatsCatalystIsOrderedWithTheResins() {
        BuildPlan plan = gelCoated(20);
        double needed = value(plan, "mould.catalyst.mass") + value(plan, "mould.coat.ToolingGel.catalyst.mass");
        OrderEntry mekp = plan.orders().stream().filter(order -> order.name().equals("Mekp")).findFirst().orElseThrow();
        assertThat(mekp.amount()).isCloseTo(1.15 * needed, Percentage.withPercentage(1e-6)); // waste of 15 %, assumed
    }

    @Test void gelCoatInAFrostyShopIsReported() {
        assertThat(gelCoated(2).faults()).extracting(PlanFault::kind).contains(PlanFault.Kind.NO_CATALYST);
    }

    @Test void sixPliesOf450GramsMakeAMouldOfNearlySevenMillimetres() { // Practical Boat Owner, May 2018: 6.680 mm and 9.45 kg/m2 at 2.5 : 1
        Mat m = Specs.csm450();
        BuildPlan plan = plan(Specs.cylinder().mould(Specs.mould(Specs.schedule(m, m, m, m, m, m))));
        assertThat(value(plan, "mould.thickness")).isCloseTo(0.006680, within(5e-7));
        assertThat(value(plan, "mould.laminate.areal")).isCloseTo(9.45, within(1e-9));
    }

    @Test void theMouldIsHeldAgainstThePart() { // Practical Action, Fibreglass boat building: at least twice
        Mat m = Specs.csm450();
        BuildPlan plan = plan(Specs.cylinder().part(Specs.schedule(m, m)).mould(Specs.mould(Specs.schedule(m, m, m, m, m))));
        assertThat(value(plan, "mould.thickness.ratio")).isCloseTo(2.5, within(1e-12));
    }

    @Test void matIsLaidOverFaceAndFlangesWithItsLaps() {
        // by hand, laps of 75 mm, rolls of 1.25 m: each half 942 mm across in one piece 1.2 m long with one lap across; a
        // strip along two lines of 1.2 m in two pieces; a strip along its open edge of 1.885 m in two
        double half = GIRTH / 2;
        double face = half * LENGTH + 0.075 * half;
        double strips = 2.4 * 0.075 + 0.075 * 0.075 + 0.075 * 2.4 + GIRTH * 0.075 + 0.075 * 0.075 + 0.075 * GIRTH;
        BuildPlan plan = plan(cylinder(PORT, STARBOARD));
        assertThat(value(plan, "mould.mat.Csm450.mass")).isCloseTo(0.45 * 2 * (face + strips), Percentage.withPercentage(0.1));
        assertThat(value(plan, "mould.resin.mass")).isCloseTo(2.5 * value(plan, "mould.mat.Csm450.mass"), Percentage.withPercentage(1e-9));
    }

    @Test void theMouldWeighsItsGelCoatItsMatAndItsResin() { // by hand: 0.4 mm of 1.2 kg/l over face and flanges, and 3.5 times the mat
        Schedule schedule = new Schedule("Shell", Specs.resin(), List.of(new Schedule.Layer.Coat(Specs.gelCoat(0.4e-3, 0.95), Specs.LIBRARY),
                new Schedule.Layer.Ply(Specs.csm450(), Specs.LIBRARY)), Specs.LIBRARY);
        BuildPlan plan = plan(Specs.cylinder().mould(Specs.mould(schedule, UPPER, LOWER)));
        double laid = GIRTH * LENGTH + 0.075 * (4 * LENGTH + 2 * GIRTH);
        assertThat(value(plan, "mould.gelcoat.mass")).isCloseTo(0.48 * laid, Percentage.withPercentage(0.1));
        assertThat(value(plan, "mould.coat.ToolingGel.volume")).isCloseTo(0.4e-3 * laid / 0.95, Percentage.withPercentage(0.1));
        assertThat(value(plan, "mould.mass")).isCloseTo(0.48 * laid + 3.5 * value(plan, "mould.mat.Csm450.mass"), Percentage.withPercentage(0.1));
    }

    @Test void waitsOfTheScheduleAddUp() {
        Schedule.Layer ply = new Schedule.Layer.Ply(Specs.csm450(), Specs.LIBRARY);
        Schedule.Layer wait = new Schedule.Layer.Wait(Specs.given("wait", Dimension.TIME, 12 * 3600));
        BuildPlan plan = plan(Specs.cylinder().mould(Specs.mould(new Schedule("Shell", Specs.resin(), List.of(ply, wait, ply, wait, ply), Specs.LIBRARY))));
        assertThat(value(plan, "mould.wait")).isCloseTo(24 * 3600, within(1e-9));
        assertThat(value(plan, "mould.hold")).isCloseTo(14 * 86400, within(1e-9));
        assertThat(plan.pots()).hasSize(3).extracting(PotEntry::laminate).containsOnly("mould");
    }

    @Test void theFirstPotOfAMouldIsHalfOfOneAndNoPlyDrinksFoam() {
        BuildPlan plan = plan(cylinder(UPPER, LOWER));
        PotEntry pot = plan.pots().getFirst();
        assertThat(pot.most()).isCloseTo(4 / 3600.0 * 1.125 * 17.5 * 60, within(1e-6)); // 4 m2/h, 2.5 x 450 g, 17.5 min
        assertThat(pot.first().resin()).isCloseTo(pot.most() / 2, within(1e-12));
    }

    @Test void twoHalvesOfOneNameAreReported() {
        assertThat(plan(cylinder(UPPER, UPPER)).faults()).extracting(PlanFault::kind).containsExactly(PlanFault.Kind.NAME);
    }

    @Test void aFlangeOfNoSizeIsAFaultAndNoFigure() {
        Mould mould = Specs.mould(Specs.schedule(Specs.csm450()));
        Mould odd = new Mould(mould.schedule(), mould.draft(), Specs.given("flange", Dimension.LENGTH, -1), mould.parts(), mould.release(), mould.hold(), mould.origin());
        BuildPlan plan = plan(Specs.cylinder().mould(odd));
        assertThat(plan.faults()).extracting(PlanFault::kind).containsExactly(PlanFault.Kind.FIGURE);
        assertThat(plan.quantity("mould.area")).isEmpty();
    }

    @Test void aResinThatSkinAndMouldShareIsReportedOnce() { // at 8 degC the gel table does not reach
        BuildPlan plan = plan(cylinder(UPPER, LOWER).shop(8).skin(Specs.skin(Specs.schedule(Specs.csm450()))));
        assertThat(plan.faults()).extracting(PlanFault::kind).containsOnlyOnce(PlanFault.Kind.GEL_OUTSIDE_TABLE);
    }

    @Test void theMouldCoversThePlugWhichIsLargerByTheShrink() {
        assertThat(value(plan(cylinder(UPPER, LOWER).shrink(0.003)), "mould.area")).isCloseTo(GIRTH * LENGTH / (0.997 * 0.997), Percentage.withPercentage(0.01));
    }
}
