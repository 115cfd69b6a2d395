package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static mouldwright.plan.stage.Plans.quantity;
import static mouldwright.plan.stage.Plans.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Hazard;
import mouldwright.plan.Measurements;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.spec.BaySpan;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.FillDefaults;
import mouldwright.plan.spec.Foam;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Place;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.Survey;
import mouldwright.units.Dimension;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** In which order bays are poured, how long lifts are left, and what shutters the bays in. */
class PourOrderTest {

    private static PourOrder order(Specs specs) {
        return plan(specs).measurements().find(PourOrder.class).orElseThrow();
    }

    @Test void aTrialCupOfTwoHundredGramsIsPouredFirst() { // a data sheet's laboratory mix: 200 g
        BuildPlan plan = plan(Specs.cylinder().fill(Blocks.solid(Materials.foam(30, 39), 0)));
        assertThat(plan.measurements().find(PourOrder.class).orElseThrow().steps().getFirst()).isInstanceOf(PourOrder.Trial.class);
        assertThat(value(plan, "fill.trial.mass")).isEqualTo(0.2);
        assertThat(value(plan, "fill.trial.a") + value(plan, "fill.trial.b")).isCloseTo(0.2, within(1e-12));
    }

    @Test void twoNeighbouringCavitiesAreNeverOpenAtOnce() { // common practice
        Specs specs = new Specs();
        for (int i = 0; i < 7; i++)
            specs.station("S" + (i + 1), 0.3 * i, Specs.circle(0.3, 0.5));
        Map<Integer, Integer> lifts = new HashMap<>();
        Set<Integer> open = new HashSet<>();
        int poured = 0;
        for (PourOrder.Step step : order(specs.fill(Blocks.solid(Materials.foam(30, 39), 0.015))).steps())
            if (step instanceof PourOrder.Pour pour) {
                open.add(pour.bay());
                assertThat(open).doesNotContain(pour.bay() - 1, pour.bay() + 1);
                assertThat(pour.lift()).isEqualTo(lifts.merge(pour.bay(), 1, Integer::sum));
                poured += pour.lift() == pour.lifts() ? 1 : 0;
            } else if (step instanceof PourOrder.Wait wait && wait.firm()) {
                wait.bays().forEach(bay -> open.remove(bay.charAt(1) - '1'));
            }
        assertThat(poured).isEqualTo(6);
    }

    @Test void everyLiftOfABayIsFollowedByAWait() {
        List<PourOrder.Step> steps = order(Specs.box().fill(Blocks.solid(lift(0.02), 0))).steps();
        assertThat(steps).extracting(step -> step.getClass().getSimpleName()).containsExactly("Trial", "Pour", "Wait", "Pour", "Wait", "Pour", "Wait");
    }

    @Test void thePlugIsTurnedOnceForAllBaysOnTheirSideAndOnceBack() {
        Fill.BayRule first = side("S1", "S2");
        Fill.BayRule last = side("S3", "S4");
        BuildPlan plan = plan(Specs.cylinder().fill(Blocks.shell(Materials.foam(30, 39), 0.11, 0, first, last)));
        assertThat(value(plan, "fill.turns")).isEqualTo(2);
        assertThat(plan.measurements().find(PourOrder.class).orElseThrow().steps().getLast()).isEqualTo(new PourOrder.Turn(Fill.Attitude.UPRIGHT));
    }

    @Test void aShellOf110MillimetresIsLeftForSevenTenthsOfAnHour() { // slab cooling with 5e-7 m2/s: 0.11^2 / (pi^2 5e-7) = 2452 s
        BuildPlan plan = plan(Specs.cylinder().fill(Blocks.shell(Materials.foam(30, 39), 0.11, 0)));
        assertThat(value(plan, "bay.S1-S2.wait")).isCloseTo(0.11 * 0.11 / (Math.PI * Math.PI * 5e-7), Percentage.withPercentage(1e-6));
        assertThat(value(plan, "bay.S1-S2.wait") / 3600).isCloseTo(0.7, within(0.05));
    }

    @Test void overfillMakesAShellThickerAndItsWaitLonger() { // 110 + 15 mm
        BuildPlan plan = plan(Specs.cylinder().fill(Blocks.shell(Materials.foam(30, 39), 0.11, 0.015)));
        assertThat(value(plan, "bay.S1-S2.wait")).isCloseTo(0.125 * 0.125 / (Math.PI * Math.PI * 5e-7), Percentage.withPercentage(1e-6));
    }

    @Test void aThinBlockIsLeftUntilItsFirmTime() { // a box 50 mm high cools in 8 min; the sheet says 30 min, or a supplier's 30 min
        assertThat(value(plan(Specs.box().fill(Blocks.solid(Materials.foam(30, 39), 0))), "bay.A-B.wait")).isEqualTo(30 * 60);
    }

    @Test void theAssumedDiffusivityIsListed() {
        assertThat(plan(Specs.box().fill(Blocks.solid(Materials.foam(30, 39), 0))).assumed()).extracting(a -> a.name()).contains("thermal diffusivity of foam");
    }

    @Test void waitsOfBaysThatAreOpenTogetherRunSideBySide() { // three bays alike: first and last together, then the middle one
        BuildPlan plan = plan(Specs.cylinder().fill(Blocks.shell(Materials.foam(30, 39), 0.11, 0)));
        double firm = 30 * 60;
        double lifts = value(plan, "bay.S1-S2.lifts");
        assertThat(value(plan, "fill.waiting")).isCloseTo(2 * ((lifts - 1) * value(plan, "bay.S1-S2.wait") + firm), Percentage.withPercentage(1e-9));
    }

    @Test void oneMixerPoursOnePotPerRise() { // common practice; mixing 20 s (data sheet), rise about 150 s (supplier)
        BuildPlan plan = plan(Specs.cylinder().fill(Blocks.solid(Materials.foam(30, 39), 0)));
        assertThat(value(plan, "fill.pouring")).isCloseTo(value(plan, "fill.pots") * (20 + FillDefaults.riseTime().likely()), within(1e-6));
    }

    @Test void shutteringOfACylinderIsItsGirthGrownByTheOverfill() { // closed form
        BuildPlan plan = plan(Specs.cylinder().frame(Blocks.frame(0.012)).fill(Blocks.shell(Materials.foam(30, 39), 0.11, 0.015)));
        assertThat(value(plan, "fill.forms.area")).isCloseTo(2 * Math.PI * 0.315 * 1.2, Percentage.withPercentage(0.1));
    }

    @Test void packingFillsThePocketAndFilmLinesItAndTheShuttering() { // closed form: a cylinder of 190 mm radius, 10 % for laps
        BuildPlan plan = plan(Specs.cylinder().frame(Blocks.frame(0.012)).fill(Blocks.shell(Materials.foam(30, 39), 0.11, 0)));
        double clear = 3 * 0.4 - 4 * 0.012;
        assertThat(value(plan, "fill.packing")).isCloseTo(Math.PI * 0.19 * 0.19 * clear, Percentage.withPercentage(0.1));
        assertThat(value(plan, "fill.film.area")).isCloseTo(1.1 * 2 * Math.PI * (0.3 * 1.2 + 0.19 * clear), Percentage.withPercentage(0.2));
        assertThat(quantity(plan, "fill.film.area").low()).isLessThan(value(plan, "fill.film.area"));
    }

    @Test void aSolidFillNeedsNoPacking() {
        assertThat(value(plan(Specs.cylinder().fill(Blocks.solid(Materials.foam(30, 39), 0.015))), "fill.packing")).isZero();
    }

    @Test void standoffsStandEveryThreeHundredMillimetresOnTheMouldedEdge() { // a girth of 1885 mm takes 7 on each of 4 plates
        BuildPlan plan = plan(Specs.cylinder().frame(Blocks.frame(0.012)).fill(Blocks.solid(Materials.foam(30, 39), 0.015)));
        assertThat(value(plan, "fill.standoffs")).isEqualTo(4 * Math.ceil(2 * Math.PI * 0.3 / 0.3));
    }

    @Test void withoutOverfillShutteringLiesOnThePlates() {
        assertThat(value(plan(Specs.cylinder().frame(Blocks.frame(0.012)).fill(Blocks.solid(Materials.foam(30, 39), 0))), "fill.standoffs")).isZero();
    }

    /** The tasks that stages write for a spec. */
    private static List<Task> tasks(Specs specs) {
        List<Task> written = new ArrayList<>();
        List<Stage> stages = new ArrayList<>(Stages.all());
        stages.add(new Stage() {
            @Override public String name() {
                return "listening";
            }

            @Override public boolean wantedBy(Spec spec) {
                return true;
            }

            @Override public void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled) { }

            @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) { }

            @Override public void conclude(Spec spec, Measurements measurements, TaskBook book, OrderBook orders, Ledger ledger) {
                book.entries().forEach(entry -> written.add(entry.task()));
            }
        });
        new Planner(stages).plan(specs.build(), () -> false);
        return written;
    }

    private static Task task(List<Task> tasks, String id) {
        return tasks.stream().filter(task -> task.id().equals(id)).findFirst().orElseThrow(() -> new AssertionError("no " + id));
    }

    @Test void aPourIsATaskThatWaitsForTheLiftBelowIt() {
        List<Task> tasks = tasks(Specs.cylinder().fill(Blocks.shell(Materials.foam(30, 39), 0.11, 0)));
        assertThat(task(tasks, "fill.pour.S1-S2.2").after()).containsExactly("fill.pour.S1-S2.1");
        assertThat(task(tasks, "fill.pour.S1-S2.1").after()).contains("fill.trial");
    }

    @Test void theMiddleBayWaitsUntilBothItsNeighboursAreFirm() {
        List<Task> tasks = tasks(Specs.cylinder().fill(Blocks.shell(Materials.foam(30, 39), 0.11, 0)));
        assertThat(task(tasks, "fill.pour.S2-S3.1").after()).containsExactlyInAnyOrder("fill.pour.S1-S2.3", "fill.pour.S3-S4.3");
    }

    @Test void turningThePlugIsATaskWithTheLiftingCaution() {
        Task turn = task(tasks(Specs.cylinder().fill(Blocks.shell(Materials.foam(30, 39), 0.11, 0, side("S3", "S4")))), "fill.turn.1");
        assertThat(turn.cautions()).contains(Hazard.LIFTING);
        assertThat(turn.after()).isNotEmpty();
    }

    @Test void aPourIsNotLaidDownOverANightAndWarnsOfIsocyanate() {
        Task pour = task(tasks(Specs.box().fill(Blocks.solid(Materials.foam(30, 39), 0))), "fill.pour.A-B.1");
        assertThat(pour.unbroken()).isTrue();
        assertThat(pour.cautions()).contains(Hazard.ISOCYANATE, Hazard.EXOTHERM);
    }

    @Test void whatIsMendedIsMeasuredAgain() {
        Survey.Reading gouge = new Survey.Reading.Gouge(new Survey.Spot(new BaySpan("S2", "S3", Stated.line(61, "gouge")), 0.14, Survey.Hand.PORT, 0.4, Place.BOTTOM),
                0.007, 0.09, 0.04, Optional.empty(), Stated.line(61, "gouge"));
        List<Task> tasks = tasks(Specs.cylinder().carve(0.001).survey(gouge));
        assertThat(task(tasks, "fair.measure.1").after()).containsExactly("fair.mend.1");
        assertThat(task(tasks, "fair.mend.1").pause()).isPresent();
    }

    private static Fill.BayRule side(String from, String to) {
        return new Fill.BayRule(new BaySpan(from, to, Stated.line(35, "bay")), Optional.empty(), Optional.of(Fill.Attitude.ON_SIDE));
    }

    private static Foam lift(double height) {
        Foam foam = Materials.foam(30, 39);
        return new Foam(foam.name(), foam.expansion(), foam.density(), foam.ratio(), foam.partA(), foam.partB(), foam.cream(), foam.rise(), foam.firm(),
                foam.carve(), Optional.of(Given.of("lift", Dimension.LENGTH, height, Stated.line(34, "lift"))), foam.pot(), foam.coldest(), foam.warmest(),
                foam.yield(), foam.stock());
    }
}
