package mouldwright.plan.stage;

import static mouldwright.plan.stage.Fakes.hours;
import static mouldwright.plan.stage.Plans.value;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.PlanFault;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.process.Air;
import org.junit.jupiter.api.Test;

class MassAndAirTest {

    private static final double POUND = 0.45359237;
    private static final double CFM = 0.3048 * 0.3048 * 0.3048 / 60;

    @Test void aBoxOfFoamWeighsItsVolumeByItsDensityInPlace() { // closed form: 0.4 x 0.2 x 0.05 m3, 36 kg/m3 over a yield of 0.9 x 0.9
        BuildPlan plan = Plans.plan(Specs.box().fill(Blocks.solid(Materials.foam(32, 36), 0.015)));
        assertThat(value(plan, "mass.plug")).isCloseTo(0.004 * 36 / 0.81, within(1e-6));
        assertThat(value(plan, "mass.centre.x")).isCloseTo(0.200, within(1e-9));
    }

    @Test void theWeightOfACylinderLiesOnItsAxisAtHalfItsLength() { // symmetry
        BuildPlan plan = Plans.plan(Specs.cylinder().fill(Blocks.solid(Materials.foam(32, 36), 0.015)).skin(Blocks.skin(Materials.schedule(Materials.csm450()))));
        assertThat(value(plan, "mass.centre.x")).isCloseTo(0.6, within(1e-6));
        assertThat(value(plan, "mass.centre.z")).isCloseTo(0.5, within(1e-4));
    }

    @Test void aPlatesWeightLiesHalfItsThicknessOffItsStation() { // closed form: of four 12 mm plates the first three stand aft, the last forward
        BuildPlan plan = Plans.plan(Specs.cylinder().frame(Blocks.frame(0.012)));
        assertThat(value(plan, "mass.centre.x")).isCloseTo((0.006 + 0.406 + 0.806 + 1.194) / 4, within(1e-9));
    }

    @Test void aPlugWeighsWhatItsPartsWeigh() {
        BuildPlan plan = Plans.plan(Specs.cylinder().frame(Blocks.frame(0.012)).fill(Blocks.solid(Materials.foam(32, 36), 0.015)).skin(Blocks.skin(Materials.schedule(Materials.csm450()))));
        assertThat(value(plan, "mass.plug")).isCloseTo(value(plan, "frame.mass") + value(plan, "mass.foam") + value(plan, "mass.skin"), within(1e-9));
    }

    @Test void aSkinOverTheUpperHalfOfACylinderLiesTwoRadiiOverPiAboveItsAxis() { // Pappus
        BuildPlan plan = Plans.plan(Specs.cylinder().bare(0, 0.5).skin(Blocks.skin(Materials.schedule(Materials.csm450()))));
        assertThat(value(plan, "mass.centre.z")).isCloseTo(0.5 + 2 * 0.3 / Math.PI, within(1e-4));
    }

    @Test void aHeavyPlugTakesMorePeople() { // guideline of 25 kg each: common practice, no limit
        BuildPlan plan = Plans.plan(Specs.cylinder().frame(Blocks.frame(0.012)).fill(Blocks.solid(Materials.foam(32, 36), 0.015)));
        assertThat(value(plan, "mass.plug.people")).isEqualTo(Math.ceil(value(plan, "mass.plug") / 25));
    }

    @Test void aShapeAloneWeighsNothing() {
        assertThat(Plans.plan(Specs.cylinder()).quantity("mass.plug")).isEmpty();
    }

    private static BuildPlan plan(Specs specs, Stage... stages) {
        List<Stage> all = new ArrayList<>(Arrays.asList(stages));
        all.addAll(List.of(new ProgrammeStage(), new AirStage()));
        return new Planner(all).plan(specs.skin(Blocks.skin(Materials.schedule(Materials.csm450()))).build(), () -> false);
    }

    private static Node kilograms(Ledger ledger, double mass) {
        return ledger.measured("put on", MASS, Places.exact(mass, "given by the test"));
    }

    private static Node percent(Ledger ledger, double styrene) {
        return ledger.measured("styrene", RATIO, Places.exact(styrene / 100, "given by the test"));
    }

    /** A session that lets go so many times a pint of styrene (0.9493 lb). */
    private static Fakes session(String id, double hours, double share, int persons) {
        return Fakes.doing("skin", (ledger, tasks) -> tasks.add(Task.of(id, id, hours(ledger, hours)).persons(persons).releases(
                Air.Application.RESIN_NOT_ATOMISED, kilograms(ledger, share * 0.9493 * POUND / Air.styrenePerMass(Air.Application.RESIN_NOT_ATOMISED, 0.35)),
                percent(ledger, 35))));
    }

    @Test void aTonneOfResinOfThirtyFivePercentLetsGoFortyFiveKilograms() { // US 40 CFR 63 subpart VVVV table 3: 0.014 x 35^2.275
        BuildPlan plan = plan(Specs.box(), Fakes.doing("skin", (ledger, tasks) -> tasks.add(Task.of("a", "A", hours(ledger, 1))
                .releases(Air.Application.RESIN_NOT_ATOMISED, kilograms(ledger, 1000), percent(ledger, 35)))));
        assertThat(value(plan, "air.styrene")).isCloseTo(45.5914, within(6e-5));
    }

    @Test void aPintOfStyreneAnHourTakesElevenHundredAndSeventyThreeCubicFeetAMinute() {
        // Univ. of Toledo, ch. X: 1173 cfm at 50 ppm and 70 degF without a mixing factor; its 403 against 24.45 l is 0.2 % off
        BuildPlan plan = plan(Specs.box().air(50, 1, (70 - 32) / 1.8), session("a", 1, 1, 1));
        assertThat(value(plan, "air.flow") / CFM).isCloseTo(1173, within(1173 * 0.005));
    }

    @Test void threeTimesTheAirForAMixingFactorOfThree() {
        double once = value(plan(Specs.box().air(20, 1, 20), session("a", 1, 1, 1)), "air.flow");
        assertThat(value(plan(Specs.box().air(20, 3, 20), session("a", 1, 1, 1)), "air.flow")).isCloseTo(3 * once, within(1e-9));
    }

    @Test void theWorstSessionsRateGovernsNotTheLargestSession() { // twice the styrene in four hours against once in one
        BuildPlan plan = plan(Specs.box(), session("slow", 4, 2, 1), session("fast", 1, 1, 1));
        assertThat(value(plan, "air.release")).isCloseTo(0.9493 * POUND / 3600, within(1e-12));
        assertThat(value(plan, "air.styrene")).isCloseTo(3 * 0.9493 * POUND, within(1e-9));
    }

    @Test void twoPeopleLayTwiceAsFastAndLetGoTwiceAsMuch() {
        BuildPlan plan = plan(Specs.box().persons(2), session("a", 2, 1, 2));
        assertThat(value(plan, "air.release")).isCloseTo(0.9493 * POUND / 3600, within(1e-12));
    }

    @Test void aMixingFactorBelowOneIsAFaultAndNoFigure() {
        BuildPlan plan = plan(Specs.box().air(20, 0.5, 20), session("a", 1, 1, 1));
        assertThat(plan.faults()).extracting(PlanFault::kind).contains(PlanFault.Kind.FIGURE);
        assertThat(plan.quantity("air.flow")).isEmpty();
    }

    @Test void aJobWithoutStyreneNeedsNoAirForIt() {
        assertThat(plan(Specs.box()).quantity("air.styrene")).isEmpty();
    }
}
