package mouldwright.plan.stage;

import static mouldwright.plan.stage.Fakes.hours;
import static mouldwright.plan.stage.Plans.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.PlanFault;
import mouldwright.plan.TaskEntry;
import mouldwright.plan.spec.Given;
import mouldwright.units.Dimension;
import org.junit.jupiter.api.Test;

/** The programme of tasks a test states: eight hours a day, Monday to Friday, one person, unless said. */
class ProgrammeStageTest {

    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;

    private static BuildPlan plan(Specs specs, Stage... stages) {
        List<Stage> all = new ArrayList<>(Arrays.asList(stages));
        all.add(new ProgrammeStage());
        return new Planner(all).plan(specs.carve(0.001).build(), () -> false);
    }

    private static TaskEntry task(BuildPlan plan, String id) {
        return plan.tasks().stream().filter(task -> task.id().equals(id)).findFirst().orElseThrow();
    }

    @Test void labourIsSummedInPersonHours() {
        BuildPlan plan = plan(Specs.box().persons(2), Fakes.doing("fill", (ledger, tasks) -> {
            tasks.add(Task.of("a", "A", hours(ledger, 3)).persons(2));
            tasks.add(Task.of("b", "B", hours(ledger, 4)));
        }));
        assertThat(value(plan, "plan.labour")).isEqualTo(7 * HOUR);
        assertThat(value(plan, "plan.labour.fill")).isEqualTo(7 * HOUR);
    }

    @Test void aTaskThatNamesNothingFollowsTheStageBefore() {
        BuildPlan plan = plan(Specs.box().persons(3), Fakes.doing("fill", (ledger, tasks) -> {
            tasks.add(Task.of("fill.a", "A", hours(ledger, 2)));
            tasks.add(Task.of("fill.b", "B", hours(ledger, 3)));
        }), Fakes.doing("skin", (ledger, tasks) -> tasks.add(Task.of("skin.a", "C", hours(ledger, 1)))));
        assertThat(task(plan, "skin.a").after()).containsExactly("fill.a", "fill.b");
        assertThat(task(plan, "skin.a").start()).isEqualTo(3 * HOUR);
    }

    @Test void aTaskThatNamesOnesThisJobHasNotFollowsTheStageBefore() {
        BuildPlan plan = plan(Specs.box(), Fakes.doing("fill", (ledger, tasks) -> tasks.add(Task.of("fill.a", "A", hours(ledger, 2)))),
                Fakes.doing("skin", (ledger, tasks) -> tasks.add(Task.of("skin.a", "C", hours(ledger, 1)).after("carve.fair"))));
        assertThat(task(plan, "skin.a").after()).containsExactly("fill.a");
    }

    @Test void aTaskFromTheStartWaitsForNothing() {
        BuildPlan plan = plan(Specs.box().persons(2), Fakes.doing("fill", (ledger, tasks) -> tasks.add(Task.of("fill.a", "A", hours(ledger, 2)))),
                Fakes.doing("skin", (ledger, tasks) -> tasks.add(Task.of("skin.a", "C", hours(ledger, 1)).fromTheStart())));
        assertThat(task(plan, "skin.a").start()).isZero();
    }

    @Test void theWaitForCureIsTold() { // 1 h of work, 48 h of cure, 1 h of work: from Monday 0 h to Wednesday 2 h
        BuildPlan plan = plan(Specs.box(), Fakes.doing("fill", (ledger, tasks) -> {
            tasks.add(Task.of("a", "A", hours(ledger, 1)).wait(hours(ledger, 48)));
            tasks.addNext(Task.of("b", "B", hours(ledger, 1)));
        }));
        assertThat(value(plan, "plan.elapsed")).isEqualTo(2 * DAY + 2 * HOUR);
        assertThat(value(plan, "plan.waiting")).isEqualTo(2 * DAY);
    }

    @Test void onePersonMoreSavesWhatCanBeSharedOut() { // two tasks of 8 h: two days alone, one day for two
        BuildPlan plan = plan(Specs.box(), Fakes.doing("fill", (ledger, tasks) -> {
            tasks.add(Task.of("a", "A", hours(ledger, 8)));
            tasks.add(Task.of("b", "B", hours(ledger, 8)));
        }));
        assertThat(value(plan, "plan.elapsed.more")).isEqualTo(8 * HOUR);
        assertThat(value(plan, "plan.saved")).isEqualTo(DAY);
    }

    @Test void tasksThatWaitForEachOtherAreAFaultAndNoTimetable() {
        BuildPlan plan = plan(Specs.box(), Fakes.doing("fill", (ledger, tasks) -> {
            tasks.add(Task.of("a", "Fill", hours(ledger, 1)).after("b"));
            tasks.add(Task.of("b", "Carve", hours(ledger, 1)).after("a"));
        }));
        assertThat(plan.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.kind()).isEqualTo(PlanFault.Kind.CIRCULAR_PRECEDENCE);
            assertThat(fault.message()).contains("Fill", "Carve");
        });
        assertThat(plan.quantity("plan.elapsed")).isEmpty();
        assertThat(plan.tasks()).isEmpty();
    }

    @Test void aTaskOfDecadesIsAFault() {
        BuildPlan plan = plan(Specs.box(), Fakes.doing("fill", (ledger, tasks) -> tasks.add(Task.of("a", "A", hours(ledger, 1e9)))));
        assertThat(plan.faults()).extracting(PlanFault::kind).containsExactly(PlanFault.Kind.TASK_TOO_LONG);
    }

    @Test void aDayOfTwentyFiveHoursIsAFaultAndNoTimetable() {
        BuildPlan plan = plan(Specs.box().day(25 * HOUR), Fakes.doing("fill", (ledger, tasks) -> tasks.add(Task.of("a", "A", hours(ledger, 1)))));
        assertThat(plan.faults()).singleElement().satisfies(fault -> assertThat(fault.message()).contains("24 h at most"));
        assertThat(plan.quantity("plan.elapsed")).isEmpty();
    }

    @Test void datesRunOverWeekendsWhereAFirstDayIsStated() { // 2027-03-05 is a Friday
        BuildPlan plan = plan(Specs.box().start(LocalDate.of(2027, 3, 5)), Fakes.doing("fill", (ledger, tasks) ->
                tasks.add(Task.of("a", "A", hours(ledger, 12)).wait(hours(ledger, 24)))));
        assertThat(task(plan, "a").dates()).hasValue(new TaskEntry.Dates(LocalDate.of(2027, 3, 5), LocalDate.of(2027, 3, 8), LocalDate.of(2027, 3, 9)));
        assertThat(task(plan, "a").endDay()).isEqualTo(2);
    }

    @Test void withoutAFirstDayThereAreNoDatesAndTheStartIsAssumed() {
        BuildPlan plan = plan(Specs.box(), Fakes.doing("fill", (ledger, tasks) -> tasks.add(Task.of("a", "A", hours(ledger, 1)))));
        assertThat(task(plan, "a").dates()).isEmpty();
        assertThat(plan.assumed()).extracting(a -> a.name()).contains("first day", "working week");
    }

    @Test void aRangeOfLabourIsARangeOfDays() { // 4 h, 8 h or 12 h of work: that evening, that evening, or the next noon
        Given hours = Stated.given("labour", Dimension.TIME, 4 * HOUR, 8 * HOUR, 12 * HOUR);
        BuildPlan plan = plan(Specs.box(), Fakes.doing("fill", (ledger, tasks) -> tasks.add(Task.of("a", "A", ledger.given(hours)))));
        assertThat(Plans.quantity(plan, "plan.elapsed").low()).isCloseTo(4 * HOUR, within(1e-9));
        assertThat(Plans.quantity(plan, "plan.elapsed").high()).isCloseTo(DAY + 4 * HOUR, within(1e-9));
    }

    @Test void theCanopysTasksRunFromBulkheadsToSkin() {
        BuildPlan plan = Plans.plan(Specs.canopy());
        assertThat(plan.tasks()).extracting(TaskEntry::stage).containsSubsequence("frame", "fill", "carve", "fair", "skin");
        assertThat(plan.tasks().getLast().critical()).isTrue();
        assertThat(plan.faults()).isEmpty();
        assertThat(plan.tasks()).filteredOn(task -> task.id().startsWith("fill.pour.")).hasSameSizeAs(plan.pours());
    }
}
