package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static mouldwright.plan.stage.Plans.quantity;
import static mouldwright.plan.stage.Plans.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.PlanFault;
import mouldwright.plan.PourEntry;
import mouldwright.plan.ledger.Derivation;
import mouldwright.plan.spec.BaySpan;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Foam;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Material;
import mouldwright.units.Dimension;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class FillStageTest {

    @Test void aSolidBayHoldsItsSectionOverItsClearLength() { // closed form
        BuildPlan plan = plan(Specs.box().frame(Specs.frame(0.012)).fill(Specs.solid(Specs.foam(30, 39), 0)));
        assertThat(value(plan, "bay.A-B.cavity")).isCloseTo(0.2 * 0.05 * 0.376, within(1e-8));
    }

    @Test void overfillRunsOverPlateEdgesAndIsCarvedOffAgain() {
        // closed form: 15 mm round a cylinder of 300 mm radius and 1.2 m length; solid between four plates of 12 mm, and as a ring over the two between bays
        BuildPlan plan = plan(Specs.cylinder().frame(Specs.frame(0.012)).fill(Specs.solid(Specs.foam(30, 39), 0.015)));
        double ring = Math.PI * (0.315 * 0.315 - 0.3 * 0.3);
        assertThat(value(plan, "fill.cavity")).isCloseTo(Math.PI * 0.315 * 0.315 * (1.2 - 4 * 0.012) + ring * 2 * 0.012, Percentage.withPercentage(0.05));
        assertThat(value(plan, "fill.trim")).isCloseTo(ring * (1.2 - 2 * 0.012), Percentage.withPercentage(0.05));
    }

    @Test void everyBayHasItsHalfOfTheOverfillOverAPlateEdge() { // closed form: one edge shared in the first bay, two in the second
        BuildPlan plan = plan(Specs.cylinder().frame(Specs.frame(0.012)).fill(Specs.shell(Specs.foam(30, 39), 0.11, 0.015)));
        double shell = Math.PI * (0.315 * 0.315 - 0.19 * 0.19), ring = Math.PI * (0.315 * 0.315 - 0.3 * 0.3);
        assertThat(value(plan, "bay.S1-S2.cavity")).isCloseTo(shell * 0.388 + ring * 0.006, Percentage.withPercentage(0.05));
        assertThat(value(plan, "bay.S2-S3.cavity")).isCloseTo(shell * 0.388 + ring * 0.012, Percentage.withPercentage(0.05));
    }

    @Test void overfillEndsAtEndPlates() { // closed form: 15 mm all round a rectangle, corners mitred
        BuildPlan plan = plan(Specs.box().frame(Specs.frame(0.012)).fill(Specs.solid(Specs.foam(30, 39), 0.015)));
        assertThat(value(plan, "fill.cavity")).isCloseTo(0.23 * 0.08 * 0.376, Percentage.withPercentage(0.01));
        assertThat(value(plan, "fill.trim")).isCloseTo((0.23 * 0.08 - 0.2 * 0.05) * 0.376, Percentage.withPercentage(0.01));
    }

    @Test void aShellLeavesAPocket() { // closed form: a ring of 110 mm inside 300 mm radius
        BuildPlan plan = plan(Specs.cylinder().frame(Specs.frame(0.012)).fill(Specs.shell(Specs.foam(30, 39), 0.11, 0)));
        assertThat(value(plan, "bay.S1-S2.cavity")).isCloseTo(Math.PI * (0.09 - 0.19 * 0.19) * 0.388, Percentage.withPercentage(0.1));
    }

    @Test void aBayRuleGovernsItsBayOnly() {
        Fill.BayRule solid = new Fill.BayRule(new BaySpan("S1", "S2", Specs.line(35, "bay S1 to S2 solid")),
                Optional.of(new Fill.Core.Solid(Specs.line(35, "solid"))), Optional.empty());
        BuildPlan plan = plan(Specs.cylinder().frame(Specs.frame(0.012)).fill(Specs.shell(Specs.foam(30, 39), 0.11, 0, solid)));
        assertThat(value(plan, "bay.S1-S2.cavity")).isCloseTo(Math.PI * 0.09 * 0.388, Percentage.withPercentage(0.1));
        assertThat(value(plan, "bay.S2-S3.cavity")).isCloseTo(Math.PI * (0.09 - 0.19 * 0.19) * 0.388, Percentage.withPercentage(0.1));
    }

    @Test void aBackboneTakesItsRoom() { // closed form: 60 by 90 through every bay
        Frame plain = Specs.frame(0.012);
        Frame frame = new Frame(plain.sheet(), plain.thickness(), plain.clearance(), plain.edges(), plain.rim(),
                java.util.List.of(new Frame.Backbone(Specs.given("w", Dimension.LENGTH, 0.06), Specs.given("d", Dimension.LENGTH, 0.09),
                        Specs.given("h", Dimension.LENGTH, 0.45), Specs.line(31, "backbone"))), plain.tolerance(), plain.origin());
        BuildPlan plan = plan(Specs.cylinder().frame(frame).fill(Specs.solid(Specs.foam(30, 39), 0)));
        assertThat(value(plan, "bay.S1-S2.cavity")).isCloseTo((Math.PI * 0.09 - 0.06 * 0.09) * 0.388, Percentage.withPercentage(0.1));
    }

    @Test void liquidFoamIsAThirtiethOfTheCavity() { // common practice; where the foam does all its sheet says
        BuildPlan plan = plan(Specs.cylinder().fill(Specs.solid(nominal(30, 39), 0)));
        assertThat(quantity(plan, "fill.liquid").low()).isCloseTo(value(plan, "fill.cavity") / 30, Percentage.withPercentage(1e-6));
    }

    @Test void aKiloOfFoamFillsTwentyEightLitres() { // CFS, pouring liquid foam: 1 kg supports 27 kg in water, so 28 l
        BuildPlan plan = plan(Specs.box().fill(Specs.solid(nominal(33, 1 / 0.028), 0)));
        double cavity = value(plan, "fill.cavity");
        assertThat(quantity(plan, "fill.mass").low()).isCloseTo(cavity / 0.028, Percentage.withPercentage(1e-6));
    }

    @Test void aColdShopTakesMoreFoam() { // the sheet's yield: 80 % at 15 degC, 90 % at 20 degC
        double warm = value(plan(Specs.box().shop(20).fill(Specs.solid(Specs.foam(30, 39), 0))), "fill.mass");
        double cold = value(plan(Specs.box().shop(15).fill(Specs.solid(Specs.foam(30, 39), 0))), "fill.mass");
        assertThat(cold / warm).isCloseTo(0.9 / 0.8, within(1e-9));
    }

    @Test void yieldInPracticeIsNineTenthsOfTheTableBetweenThreeQuartersAndAll() { // common practice, assumed
        BuildPlan plan = plan(Specs.box().fill(Specs.solid(Specs.foam(30, 39), 0)));
        double full = value(plan, "fill.cavity") * 39 / 0.9;
        assertThat(quantity(plan, "fill.mass").low()).isCloseTo(full, Percentage.withPercentage(1e-9));
        assertThat(quantity(plan, "fill.mass").value()).isCloseTo(full / 0.9, Percentage.withPercentage(1e-9));
        assertThat(quantity(plan, "fill.mass").high()).isCloseTo(full / 0.75, Percentage.withPercentage(1e-9));
    }

    @Test void liquidFollowsFromMassWhereTheDensitiesOfBothPartsAreKnown() { // mass balance: 1 : 1 by volume is 1.17 kg/l
        BuildPlan plan = plan(Specs.box().fill(Specs.solid(withParts(), 0)));
        assertThat(value(plan, "fill.liquid")).isCloseTo(value(plan, "fill.mass") / 1170, Percentage.withPercentage(1e-9));
    }

    @Test void partsMixedByVolumeAreWeighedByTheirDensities() { // mass balance: 1.12 of 2.34
        BuildPlan plan = plan(Specs.box().fill(Specs.solid(withParts(), 0)));
        assertThat(value(plan, "fill.mass.a")).isCloseTo(value(plan, "fill.mass") * 1.12 / 2.34, Percentage.withPercentage(1e-9));
        assertThat(value(plan, "fill.mass.a") + value(plan, "fill.mass.b")).isCloseTo(value(plan, "fill.mass"), within(1e-12));
    }

    @Test void sixHundredMillimetresTakeThreeLiftsOfTwoHundred() { // a cylinder of 300 mm radius
        BuildPlan plan = plan(Specs.cylinder().fill(Specs.solid(Specs.foam(30, 39), 0)));
        assertThat(value(plan, "bay.S1-S2.lifts")).isEqualTo(3);
    }

    @Test void theLiftsOfABayFillIt() {
        BuildPlan plan = plan(Specs.cylinder().fill(Specs.solid(Specs.foam(30, 39), 0.015)));
        double poured = plan.pours().stream().filter(p -> p.bay().equals("S1-S2")).mapToDouble(PourEntry::volume).sum();
        assertThat(poured).isCloseTo(value(plan, "bay.S1-S2.cavity"), Percentage.withPercentage(0.1));
    }

    @Test void theLiftsOfAllBaysHoldTheOverfillOverPlateEdgesToo() {
        BuildPlan plan = plan(Specs.cylinder().frame(Specs.frame(0.012)).fill(Specs.solid(Specs.foam(30, 39), 0.015)));
        assertThat(plan.pours().stream().mapToDouble(PourEntry::volume).sum()).isCloseTo(value(plan, "fill.cavity"), Percentage.withPercentage(1e-6));
    }

    @Test void aFlatBoxPouredOnItsSideStandsHigher() { // 200 mm instead of 50 mm
        Fill.BayRule side = new Fill.BayRule(new BaySpan("A", "B", Specs.line(35, "bay A to B pour on side")), Optional.empty(),
                Optional.of(Fill.Attitude.ON_SIDE));
        Fill fill = new Fill(thinLifts(), new Fill.Core.Solid(Specs.line(34, "solid")), Specs.given("overfill", Dimension.LENGTH, 0),
                java.util.List.of(side), Specs.line(34, "fill"));
        assertThat(value(plan(Specs.box().fill(fill)), "bay.A-B.lifts")).isEqualTo(4);
    }

    @Test void potsAreCountedLiftByLift() { // never on the total: each lift needs its own last pot
        BuildPlan plan = plan(Specs.cylinder().fill(Specs.solid(Specs.foam(30, 39), 0)));
        int pots = plan.pours().stream().mapToInt(p -> (int) Math.ceil(p.mass() / 1.0)).sum();
        assertThat(value(plan, "fill.pots")).isEqualTo(pots);
        assertThat(plan.pours().stream().mapToInt(PourEntry::pots).sum()).isEqualTo(pots);
    }

    @Test void aShellThickerThanTheSectionIsReported() { // 110 mm round a box of 50 mm
        BuildPlan plan = plan(Specs.box().fill(Specs.shell(Specs.foam(30, 39), 0.11, 0)));
        assertThat(plan.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.kind()).isEqualTo(PlanFault.Kind.SHELL_TOO_THICK);
            assertThat(fault.figure().orElseThrow().value()).isEqualTo(0.11);
        });
    }

    @Test void platesThatMeetLeaveNoBay() {
        BuildPlan plan = plan(new Specs().station("A", 0, Specs.rectangle(0.1, 0.05)).station("B", 0.02, Specs.rectangle(0.1, 0.05))
                .frame(Specs.frame(0.012)).fill(Specs.solid(Specs.foam(30, 39), 0)));
        assertThat(plan.faults()).extracting(PlanFault::kind).contains(PlanFault.Kind.BAY_SHUT);
    }

    @Test void foamThatCreamsBeforeItIsMixedIsReported() { // mixing alone takes 20 s
        Foam slow = Specs.foam(30, 39);
        Foam fast = new Foam(slow.name(), slow.expansion(), slow.density(), slow.ratio(), slow.partA(), slow.partB(),
                Optional.of(Specs.given("cream time", Dimension.TIME, 15)), slow.rise(), slow.firm(), slow.carve(), slow.lift(), slow.pot(),
                slow.coldest(), slow.warmest(), slow.yield(), slow.stock());
        assertThat(plan(Specs.box().fill(Specs.solid(fast, 0))).faults()).extracting(PlanFault::kind)
                .containsExactly(PlanFault.Kind.CREAM_TOO_SHORT);
    }

    @Test void aBayThatNamesNoStationIsReportedOnce() {
        Fill.BayRule rule = new Fill.BayRule(new BaySpan("S1", "S9", Specs.line(35, "bay S1 to S9 solid")),
                Optional.of(new Fill.Core.Solid(Specs.line(35, "solid"))), Optional.of(Fill.Attitude.UPRIGHT));
        BuildPlan plan = plan(Specs.cylinder().fill(Specs.shell(Specs.foam(30, 39), 0.11, 0, rule)));
        assertThat(plan.faults()).singleElement().satisfies(f -> assertThat(f.message()).contains("S9"));
    }

    @Test void aRangeOfTheSheetsThicknessReachesTheFoam() { // closed form: bays are shorter between thicker plates
        Frame plain = Specs.frame(0.012);
        Frame frame = new Frame(plain.sheet(), Specs.given("sheet thickness", Dimension.LENGTH, 0.011, 0.012, 0.013), plain.clearance(),
                plain.edges(), plain.rim(), plain.backbones(), plain.tolerance(), plain.origin());
        BuildPlan plan = plan(Specs.box().frame(frame).fill(Specs.solid(Specs.foam(30, 39), 0)));
        assertThat(quantity(plan, "bay.A-B.cavity").low()).isCloseTo(0.2 * 0.05 * 0.374, within(1e-8));
        assertThat(quantity(plan, "bay.A-B.cavity").high()).isCloseTo(0.2 * 0.05 * 0.378, within(1e-8));
    }

    @Test void aRangeOfTheSheetsThicknessReachesTheOverfillOverPlateEdges() { // closed form: a plate takes its disc of foam, less the ring over its edge
        Frame plain = Specs.frame(0.012);
        Frame frame = new Frame(plain.sheet(), Specs.given("sheet thickness", Dimension.LENGTH, 0.011, 0.012, 0.013), plain.clearance(),
                plain.edges(), plain.rim(), plain.backbones(), plain.tolerance(), plain.origin());
        BuildPlan plan = plan(Specs.cylinder().frame(frame).fill(Specs.solid(Specs.foam(30, 39), 0.015)));
        double change = Math.PI * (4 * 0.315 * 0.315 - 2 * (0.315 * 0.315 - 0.3 * 0.3)) * 0.001;
        assertThat(quantity(plan, "fill.cavity").high() - value(plan, "fill.cavity")).isCloseTo(change, Percentage.withPercentage(0.1));
    }

    @Test void aRangeOfTheShrinkReachesWhatIsCarvedOff() { // closed form: pi ((R + o)2 - R2) L between end plates, R and L of the plug
        BuildPlan plan = plan(Specs.cylinder().shrink(0.001, 0.003, 0.006).frame(Specs.frame(0.012)).fill(Specs.solid(Specs.foam(30, 39), 0.015)));
        assertThat(quantity(plan, "fill.trim").low()).isCloseTo(trim(0.001), Percentage.withPercentage(0.05));
        assertThat(quantity(plan, "fill.trim").high()).isCloseTo(trim(0.006), Percentage.withPercentage(0.05));
        assertThat(quantity(plan, "fill.trim").high() - quantity(plan, "fill.trim").low()).isCloseTo(trim(0.006) - trim(0.001), Percentage.withPercentage(2));
    }

    private static double trim(double shrink) {
        double radius = 0.3 / (1 - shrink);
        return Math.PI * ((radius + 0.015) * (radius + 0.015) - radius * radius) * (1.2 / (1 - shrink) - 0.024);
    }

    @Test void aRangeOfTheSheetsThicknessReachesWhatIsCarvedOff() { // closed form: the ring ends at the end plates
        Frame plain = Specs.frame(0.012);
        Frame frame = new Frame(plain.sheet(), Specs.given("sheet thickness", Dimension.LENGTH, 0.011, 0.012, 0.013), plain.clearance(),
                plain.edges(), plain.rim(), plain.backbones(), plain.tolerance(), plain.origin());
        BuildPlan plan = plan(Specs.cylinder().frame(frame).fill(Specs.solid(Specs.foam(30, 39), 0.015)));
        double ring = Math.PI * (0.315 * 0.315 - 0.3 * 0.3);
        assertThat(quantity(plan, "fill.trim").low()).isCloseTo(ring * (1.2 - 2 * 0.013), Percentage.withPercentage(0.05));
        assertThat(quantity(plan, "fill.trim").high()).isCloseTo(ring * (1.2 - 2 * 0.011), Percentage.withPercentage(0.05));
    }

    @Test void aCavityIsSaidToMoveInProportionNotToBeMeasuredAgain() {
        BuildPlan plan = plan(Specs.cylinder().shrink(0.001, 0.003, 0.006).fill(Specs.solid(Specs.foam(30, 39), 0.015)));
        assertThat(((Derivation.Reckoned) plan.derivation("bay.S1-S2.cavity").orElseThrow()).formula())
                .isEqualTo("as measured, with overfill, solid, moved in proportion as shrink leaves its likely value, at the rate its sections have there");
    }

    @Test void anAssumedShrinkOfNothingIsSaid() {
        assertThat(plan(Specs.box().fill(Specs.solid(Specs.foam(30, 39), 0))).assumed()).extracting(a -> a.name())
                .contains("shrink", "share of the yield reached in practice", "forward end", "crown limit");
    }

    /** A foam without a yield table: all of its expansion, as far as practice reaches. */
    private static Foam nominal(double expansion, double density) {
        Foam foam = Specs.foam(expansion, density);
        return new Foam(foam.name(), foam.expansion(), foam.density(), foam.ratio(), foam.partA(), foam.partB(), foam.cream(),
                foam.rise(), foam.firm(), foam.carve(), foam.lift(), foam.pot(), foam.coldest(), foam.warmest(), java.util.List.of(),
                Material.Stock.plain(Specs.LIBRARY));
    }

    private static Foam thinLifts() {
        Foam foam = Specs.foam(30, 39);
        return new Foam(foam.name(), foam.expansion(), foam.density(), foam.ratio(), foam.partA(), foam.partB(), foam.cream(),
                foam.rise(), foam.firm(), foam.carve(), Optional.of(Specs.given("lift", Dimension.LENGTH, 0.05)), foam.pot(), foam.coldest(),
                foam.warmest(), foam.yield(), foam.stock());
    }

    private static Foam withParts() {
        return Specs.foam(Optional.empty(), 36, Optional.of(Specs.given("density of A", Dimension.DENSITY, 1120)),
                Optional.of(Specs.given("density of B", Dimension.DENSITY, 1220)));
    }

    @Test void aYieldThatFallsAsItGetsWarmerIsAFault() {
        Foam foam = Specs.foam(32, 36);
        Foam odd = new Foam(foam.name(), foam.expansion(), foam.density(), foam.ratio(), foam.partA(), foam.partB(), foam.cream(), foam.rise(), foam.firm(), foam.carve(), foam.lift(),
                foam.pot(), foam.coldest(), foam.warmest(), java.util.List.of(new Foam.YieldRow(25, 0.95, Specs.LIBRARY), new Foam.YieldRow(20, 0.99, Specs.LIBRARY)), foam.stock());
        assertThat(plan(Specs.box().frame(Specs.frame(0.012)).fill(Specs.solid(odd, 0.015))).faults()).singleElement().satisfies(fault -> {
            assertThat(fault.kind()).isEqualTo(PlanFault.Kind.FIGURE);
            assertThat(fault.figure().orElseThrow().value()).isCloseTo(0.95, within(1e-12));
            assertThat(fault.limit().orElseThrow().value()).isCloseTo(0.99, within(1e-12));
        });
    }
}
