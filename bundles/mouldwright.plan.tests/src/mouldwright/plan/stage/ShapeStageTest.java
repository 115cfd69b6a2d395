package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static mouldwright.plan.stage.Plans.quantity;
import static mouldwright.plan.stage.Plans.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Form;
import mouldwright.plan.spec.Schedule;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class ShapeStageTest {

    @Test void aBoxHoldsLengthTimesBreadthTimesHeight() { // closed form
        BuildPlan plan = plan(Specs.box());
        assertThat(value(plan, "shape.volume")).isCloseTo(0.4 * 0.2 * 0.05, within(1e-9));
        assertThat(value(plan, "shape.area")).isCloseTo(0.4 * 0.5, within(1e-9));
        assertThat(value(plan, "shape.length")).isCloseTo(0.4, within(1e-12));
    }

    @Test void theSmallestSpecHasAShapeAndNothingElse() { // a block that is absent leaves its stage out
        assertThat(plan(Specs.box()).quantities()).allSatisfy(q -> assertThat(q.stage()).isEqualTo("shape"));
    }

    @Test void theCentroidOfABoxIsItsMiddle() { // closed form
        BuildPlan plan = plan(Specs.box());
        assertThat(value(plan, "shape.centroid.x")).isCloseTo(0.2, within(1e-9));
        assertThat(value(plan, "shape.centroid.z")).isCloseTo(0.025, within(1e-9));
    }

    @Test void aConesBevelIsTheSlopeOfItsSide() { // closed form: tan(bevel) = (0.5 - 0.3) / 0.8
        assertThat(value(plan(Specs.cone()), "station.S2.bevel.max")).isCloseTo(Math.atan(0.25), within(1e-4));
    }

    @Test void aConeFrustumHasItsPublishedVolumeAndSide() { // closed form: R 0.5, r 0.3, h 0.8
        BuildPlan plan = plan(Specs.cone());
        assertThat(value(plan, "shape.volume")).isCloseTo(0.410501440, Percentage.withPercentage(0.1));
        assertThat(value(plan, "shape.area")).isCloseTo(2.072498935, Percentage.withPercentage(0.1));
    }

    @Test void bareBandsAreNotMoulded() { // closed form: the lower quarter of the girth of a cylinder
        BuildPlan plan = plan(Specs.cylinder().bare(0, 0.25));
        assertThat(value(plan, "shape.area.moulded")).isCloseTo(0.75 * value(plan, "shape.area"), Percentage.withPercentage(0.1));
    }

    @Test void mouldedEndsCountAsMouldedSurface() { // closed form: two discs more
        double sides = value(plan(Specs.cylinder()), "shape.area.moulded");
        assertThat(value(plan(Specs.cylinder().mouldedEnds()), "shape.area.moulded"))
                .isCloseTo(sides + 2 * Math.PI * 0.09, Percentage.withPercentage(0.1));
    }

    @Test void stationsGiveTheFinishedSizeWhateverIsAllowedForShrink() {
        assertThat(value(plan(Specs.cylinder().shrink(0.01)), "station.S1.area")).isCloseTo(Math.PI * 0.09, Percentage.withPercentage(0.01));
    }

    @Test void theClearLengthOfTheFirstBayLosesOnePlateAndOfTheLastTwo() { // first stands aft, last forward, a tie aft
        BuildPlan plan = plan(Specs.cylinder().frame(Blocks.frame(0.012)));
        assertThat(value(plan, "bay.S1-S2.clear")).isCloseTo(0.388, within(1e-9));
        assertThat(value(plan, "bay.S3-S4.clear")).isCloseTo(0.376, within(1e-9));
    }

    @Test void theClearLengthGrowsWithThePlugButNotWithItsPlates() { // closed form: 0.3 % makes a plug 1.003009 times larger
        BuildPlan plan = plan(Specs.cylinder().frame(Blocks.frame(0.012)).shrink(0.003));
        assertThat(value(plan, "bay.S1-S2.clear")).isCloseTo(0.4 / 0.997 - 0.012, within(1e-12));
    }

    @Test void aMouldedEndMovesItsPlateInByTheBuildUp() { // closed form: one ply of 450 g is 1.1133 mm
        BuildPlan plan = plan(Specs.cylinder().frame(Blocks.frame(0.012)).mouldedEnds().skin(Blocks.skin(Materials.schedule(Materials.csm450()))));
        assertThat(value(plan, "bay.S1-S2.clear")).isCloseTo(0.388 - 0.0011133, within(1e-7));
    }

    @Test void theCrownOfABayIsTheSagittaOfItsArc() {
        // closed form: a board of 0.30 m on a radius of 3 m misses by 3.752 mm
        assertThat(value(plan(barrel()), "bay.P1-P2.crown")).isCloseTo(0.003752, within(2e-6));
    }

    @Test void aCrownOfThreeAndThreeQuartersWantsOneStationMore() { // n = ceil(sqrt(3.752 / 1.5)) = 2 parts
        assertThat(value(plan(barrel()), "bay.P1-P2.stations")).isEqualTo(1);
    }

    @Test void aCylinderWantsNoStationMore() {
        assertThat(value(plan(Specs.cylinder()), "bay.S1-S2.stations")).isZero();
    }

    @Test void stationsOutOfOrderAreAFaultWithItsPlace() {
        BuildPlan plan = plan(Specs.box().station("C", 0.2, Form.Like.same("A")));
        assertThat(plan.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.kind()).isEqualTo(PlanFault.Kind.LOFT);
            assertThat(fault.place().words()).contains("station C");
            assertThat(fault.remedy()).contains("sort");
        });
        assertThat(plan.quantities()).isEmpty();
    }

    @Test void aStationLikeItselfIsAFaultAndNoEndlessLoop() {
        BuildPlan plan = plan(new Specs().station("A", 0, Form.Like.same("B")).station("B", 1, Form.Like.same("A")));
        assertThat(plan.faults()).singleElement().satisfies(fault -> assertThat(fault.kind()).isEqualTo(PlanFault.Kind.LIKE_CIRCLE)); // told once
    }

    @Test void aLoftedStationPastTheEndIsAFault() {
        BuildPlan plan = plan(Specs.box().station("C", 0.9, new Form.Lofted()));
        assertThat(plan.faults()).extracting(PlanFault::kind).containsExactly(PlanFault.Kind.STATION_OUTSIDE);
    }

    @Test void figuresThatAreNoNumbersAreFaults() {
        BuildPlan plan = plan(new Specs().station("A", 0, Specs.rectangle(Double.NaN, 1)).station("B", 1, Specs.rectangle(1, 1)));
        assertThat(plan.faults()).isNotEmpty();
        assertThat(plan.quantities()).isEmpty();
    }

    @Test void aPointedEndBearsNoPlateAndStillEndsABay() {
        Specs nose = new Specs().station("N", 0, new Form.Pointed(0, 0.5));
        for (int i = 1; i < 6; i++)
            nose.station("S" + i, 0.2 * i, Specs.circle(0.05 * i, 0.5));
        BuildPlan plan = plan(nose.frame(Blocks.frame(0.012)));
        assertThat(plan.plates()).extracting(p -> p.station()).containsExactly("S1", "S2", "S3", "S4", "S5");
        assertThat(value(plan, "bay.N-S1.volume")).isCloseTo(Math.PI * 0.05 * 0.05 * 0.2 / 3, Percentage.withPercentage(1)); // cone, closed form
    }

    /** A barrel whose side is an arc of 3 m, plates 300 mm apart at its middle, shaped by stations every 150 mm. */
    private static Specs barrel() {
        Specs barrel = new Specs();
        for (int i = -4; i <= 4; i++) {
            double x = 0.15 * i;
            String name = i == -1 ? "P1" : i == 1 ? "P2" : "S" + (i + 5);
            barrel.station(name, x, Specs.circle(Math.sqrt(9 - x * x) - 2.5, 1), i == -1 || i == 1);
        }
        return barrel;
    }

    @Test void aCoatInTheSkinsScheduleAddsItsDryFilm() { // closed form: 0.43 mm of gel coat under one ply of 1.1133 mm
        Schedule plain = Materials.schedule(Materials.csm450());
        List<Schedule.Layer> layers = new ArrayList<>(List.of(new Schedule.Layer.Coat(Blocks.finish(1, 0.00043).coats().getFirst().coating(), plain.origin())));
        layers.addAll(plain.layers());
        Schedule coated = new Schedule("Coated", plain.resin(), layers, plain.origin());
        double without = value(plan(Specs.cylinder().skin(Blocks.skin(plain))), "shape.buildup");
        assertThat(value(plan(Specs.cylinder().skin(Blocks.skin(coated))), "shape.buildup")).isCloseTo(without + 0.00043, within(1e-12));
    }

    @Test void aRangeOfTheShrinkReachesCrowns() { // closed form: all lengths grow as 1 / (1 - shrink)
        Specs bulging = new Specs().station("A", 0, Specs.circle(0.3, 0.6)).station("M", 0.4, Specs.circle(0.32, 0.6), false)
                .station("B", 0.8, Specs.circle(0.3, 0.6)).shrink(0.001, 0.003, 0.006);
        BuildPlan plan = plan(bulging);
        double likely = value(plan, "bay.A-B.crown");
        assertThat(likely).isGreaterThan(0.01);
        assertThat(quantity(plan, "bay.A-B.crown").low()).isCloseTo(likely * 0.997 / 0.999, within(1e-12));
        assertThat(quantity(plan, "bay.A-B.crown").high()).isCloseTo(likely * 0.997 / 0.994, within(1e-12));
    }
}
