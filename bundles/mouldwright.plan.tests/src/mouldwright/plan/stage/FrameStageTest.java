package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static mouldwright.plan.stage.Plans.quantity;
import static mouldwright.plan.stage.Plans.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.PlanFault;
import mouldwright.plan.PlateEntry;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.FrameDefaults;
import mouldwright.units.Dimension;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class FrameStageTest {

    private static final double PLY = 0.0011133; // ISO 12215-5: 450 g at 1 : 2.5

    @Test void aPlateIsSmallerThanTheBodyByTheSkin() { // closed form: a cylinder has no bevel
        BuildPlan plan = plan(Specs.cylinder().frame(Blocks.frame(0.012)).skin(Blocks.skin(Materials.schedule(Materials.csm450()))));
        assertThat(plan.plates().getFirst().outline()).allSatisfy(p ->
                assertThat(Math.hypot(p.y(), p.z() - 0.5)).isCloseTo(0.3 - PLY, within(2e-5)));
    }

    @Test void surfacerCountsWhatSandingLeaves() { // three coats of 150 um, a third sanded off: 0.3 mm
        BuildPlan plan = plan(Specs.cylinder().frame(Blocks.frame(0.012)).finish(Blocks.finish(3, 150e-6)));
        assertThat(plan.plates().getFirst().outline()).allSatisfy(p ->
                assertThat(Math.hypot(p.y(), p.z() - 0.5)).isCloseTo(0.3 - 0.0003, within(2e-5)));
        assertThat(value(plan, "shape.buildup")).isCloseTo(0.0003, within(1e-12));
    }

    @Test void aConesPlateIsSmallerByTheSkinOverTheCosineOfItsBevel() { // closed form
        BuildPlan plan = plan(Specs.cone().frame(Blocks.frame(0.012)).skin(Blocks.skin(Materials.schedule(Materials.csm450()))));
        double bevel = Math.atan(0.25);
        double radius = 0.5 - 0.2 / 3 - 0.25 * 0.012 - PLY / Math.cos(bevel); // S2 stands toward the larger side, its small face rules
        double stands = plan.plates().get(1).stands().equals("aft") ? radius : radius + 0.25 * 0.012;
        assertThat(plan.plates().get(1).outline()).allSatisfy(p ->
                assertThat(Math.hypot(p.y(), p.z() - 0.6)).isCloseTo(stands, within(5e-5)));
    }

    @Test void aSquareEdgeOnAConeLeavesAGapOfThicknessTimesTheTangent() { // closed form: 12 mm x 0.25
        BuildPlan plan = plan(Specs.cone().frame(Blocks.frame(0.012)));
        assertThat(plan.plates().get(1).gap()).isCloseTo(0.003, within(2e-5));
        assertThat(plan.plates().get(1).gapNormal()).isCloseTo(0.012 * Math.sin(Math.atan(0.25)), within(2e-5));
    }

    @Test void aBevelledEdgeLeavesNoGap() {
        BuildPlan plan = plan(Specs.cone().frame(Blocks.frame(0.012, Frame.Edges.BEVELLED, FrameDefaults.rim())));
        assertThat(plan.plates()).allSatisfy(plate -> assertThat(plate.gap()).isZero());
    }

    @Test void aBevelledEdgeIsToldWithItsBevelLine() { // closed form: a cone of slope 0.25 is 3 mm smaller 12 mm further on
        PlateEntry plate = plan(Specs.cone().frame(Blocks.frame(0.012, Frame.Edges.BEVELLED, FrameDefaults.rim()))).plates().get(1);
        assertThat(plate.bevelled()).isTrue();
        double cut = plate.outline().stream().mapToDouble(p -> Math.hypot(p.y(), p.z() - 0.6)).max().orElseThrow();
        assertThat(plate.bevelLine()).allSatisfy(p -> assertThat(Math.hypot(p.y(), p.z() - 0.6)).isCloseTo(cut - 0.003, within(5e-5)));
        assertThat(plan(Specs.cone().frame(Blocks.frame(0.012))).plates().get(1).bevelLine()).isEmpty();
    }

    @Test void aBevelledPlateWeighsAFrustum() { // closed form: mean area of its two faces, within what the mean leaves out
        BuildPlan plan = plan(Specs.cone().frame(Blocks.frame(0.012, Frame.Edges.BEVELLED, FrameDefaults.rim())));
        double mass = 0;
        for (PlateEntry plate : plan.plates()) {
            double large = plate.outline().stream().mapToDouble(p -> Math.hypot(p.y(), p.z() - 0.6)).max().orElseThrow();
            double small = large - 0.003;
            mass += Math.PI * 0.012 / 3 * (large * large + large * small + small * small) * 695;
        }
        assertThat(value(plan, "frame.mass")).isCloseTo(mass, Percentage.withPercentage(0.1));
    }

    @Test void theFirstPlateStandsAftAndTheLastForward() {
        BuildPlan plan = plan(Specs.cylinder().frame(Blocks.frame(0.012)));
        assertThat(plan.plates()).extracting(p -> p.stands()).containsExactly("aft", "aft", "aft", "forward");
    }

    @Test void platesBetweenSolidBaysHaveNoPocket() { // closed form: four discs
        BuildPlan plan = plan(Specs.cylinder().frame(Blocks.frame(0.012)));
        assertThat(value(plan, "frame.mass")).isCloseTo(4 * Math.PI * 0.09 * 0.012 * 695, Percentage.withPercentage(0.1));
    }

    @Test void aStatedRimLeavesARing() { // closed form: rings of 60 mm
        Frame frame = Blocks.frame(0.012, Frame.Edges.SQUARE, Stated.given("rim", Dimension.LENGTH, 0.06));
        assertThat(value(plan(Specs.cylinder().frame(frame)), "frame.mass"))
                .isCloseTo(4 * Math.PI * (0.09 - 0.24 * 0.24) * 0.012 * 695, Percentage.withPercentage(0.2));
    }

    @Test void aPocketBesideASolidBayIsReportedWithItsVolume() { // closed form: discs of 240 mm radius, 12 mm thick
        Frame frame = Blocks.frame(0.012, Frame.Edges.SQUARE, Stated.given("rim", Dimension.LENGTH, 0.06));
        BuildPlan plan = plan(Specs.cylinder().frame(frame).fill(Blocks.solid(Materials.foam(30, 39), 0)));
        assertThat(plan.faults()).hasSize(4).allSatisfy(fault -> {
            assertThat(fault.kind()).isEqualTo(PlanFault.Kind.POCKET_OPEN);
            assertThat(fault.figure().orElseThrow().value()).isCloseTo(Math.PI * 0.24 * 0.24 * 0.012, Percentage.withPercentage(0.1));
        });
    }

    @Test void platesBetweenShellsAreWoodRoundAPocket() { // closed form: rings of 60 mm, the rim assumed
        BuildPlan plan = plan(Specs.cylinder().frame(Blocks.frame(0.012)).fill(Blocks.shell(Materials.foam(30, 39), 0.09, 0)));
        assertThat(plan.faults()).isEmpty();
        assertThat(value(plan, "frame.mass")).isCloseTo(4 * Math.PI * (0.09 - 0.24 * 0.24) * 0.012 * 695, Percentage.withPercentage(0.2));
    }

    @Test void sheetsCannotBeFewerThanTheirAreaAllows() { // 1.1310 m2 of discs on sheets of 2.9768 m2
        BuildPlan plan = plan(Specs.cylinder().frame(Blocks.frame(0.012)));
        assertThat(quantity(plan, "frame.sheets").low()).isEqualTo(1);
        assertThat(quantity(plan, "frame.sheets").high()).isEqualTo(1);
        assertThat(plan.assumed()).anySatisfy(a -> assertThat(a.name()).isEqualTo("share of a sheet used"));
    }

    @Test void backbonesAreCutOutOfSheetsToo() {
        // closed form: discs of 1.131 m2, and five layers of 12 mm in a width of 60 mm, each 400 mm by 1.2 m: 3.531 m2, over one sheet of 2.977 m2
        Frame plain = Blocks.frame(0.012);
        Frame frame = new Frame(plain.sheet(), plain.thickness(), plain.clearance(), plain.edges(), plain.rim(),
                java.util.List.of(new Frame.Backbone(Stated.given("w", Dimension.LENGTH, 0.06), Stated.given("d", Dimension.LENGTH, 0.4),
                        Stated.given("h", Dimension.LENGTH, 0.3), Stated.line(31, "backbone"))), plain.tolerance(), plain.origin());
        BuildPlan plan = plan(Specs.cylinder().frame(frame));
        assertThat(quantity(plan, "frame.sheets").low()).isEqualTo(2);
        assertThat(quantity(plan, "frame.sheets").label()).contains("backbones");
        assertThat(plan.assumed()).extracting(a -> a.name()).contains("backbone density");
    }

    @Test void aPlateThinnerThanItsSkinIsReported() { // 20 plies of 450 g are 22 mm, the box stands 50 high
        BuildPlan plan = plan(new Specs().station("A", 0, Specs.rectangle(0.1, 0.04)).station("B", 0.4, Specs.rectangle(0.1, 0.04))
                .frame(Blocks.frame(0.012)).skin(Blocks.skin(Materials.schedule(plies(20)))));
        assertThat(plan.faults()).extracting(PlanFault::kind).containsOnly(PlanFault.Kind.PLATE_VANISHED);
        assertThat(plan.faults().getFirst().figure()).hasValueSatisfying(figure ->
                assertThat(figure.value()).isCloseTo(20 * PLY, within(1e-5)));
        assertThat(plan.plates()).isEmpty();
    }

    @Test void aSheetOfNoThicknessIsReportedNotThrown() {
        BuildPlan plan = plan(Specs.box().frame(Blocks.frame(0)));
        assertThat(plan.faults()).extracting(PlanFault::kind).contains(PlanFault.Kind.FIGURE);
    }

    private static mouldwright.plan.spec.Mat[] plies(int count) {
        mouldwright.plan.spec.Mat[] mats = new mouldwright.plan.spec.Mat[count];
        java.util.Arrays.fill(mats, Materials.csm450());
        return mats;
    }
}
