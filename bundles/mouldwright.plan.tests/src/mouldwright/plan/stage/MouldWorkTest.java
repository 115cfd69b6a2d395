package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.OrderEntry;
import mouldwright.plan.TaskEntry;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Schedule;
import mouldwright.units.Dimension;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** What is to be done for finish, release and mould. Closed forms. */
class MouldWorkTest {

    private static final Schedule.Layer PLY = new Schedule.Layer.Ply(Materials.csm450(), Stated.LIBRARY);
    private static final Schedule.Layer WAIT = new Schedule.Layer.Wait(Stated.given("wait", Dimension.TIME, 12 * 3600));

    private static BuildPlan build(Schedule.Layer... layers) {
        return plan(Specs.cylinder().finish(Blocks.finish(3, 150e-6)).mould(Blocks.mould(new Schedule("Shell", Materials.resin(), List.of(layers), Stated.LIBRARY),
                Blocks.half("Upper", Mould.Pull.UP), Blocks.half("Lower", Mould.Pull.DOWN))));
    }

    private static TaskEntry task(BuildPlan plan, String id) {
        return plan.tasks().stream().filter(task -> task.id().equals(id)).findFirst().orElseThrow(() -> new AssertionError("no " + id));
    }

    @Test void theMouldIsLaidSessionBySessionAndHeldBeforeItIsTakenOff() {
        BuildPlan plan = build(PLY, WAIT, PLY, PLY);
        assertThat(task(plan, "mould.lay.1").pause()).isCloseTo(12 * 3600, within(1e-6));
        assertThat(task(plan, "mould.lay.2").pause()).isCloseTo(14 * 86400, within(1e-6));
        assertThat(task(plan, "mould.off").after()).containsExactly("mould.lay.2");
    }

    @Test void pliesOfOneSessionAreLaidWetInWet() {
        Schedule.Layer light = new Schedule.Layer.Ply(Materials.mat("Csm300", 0.300, 1 / 3.5), Stated.LIBRARY);
        assertThat(task(build(PLY, light, PLY), "mould.lay.1").pause()).isZero();
    }

    @Test void finishReleaseAndMouldFollowOneAnother() {
        assertThat(build(PLY).tasks().stream().map(TaskEntry::stage).distinct()).containsSubsequence("finish", "release", "mould");
    }

    @Test void fiveCoatsOfWaxStandForFiveHours() {
        assertThat(task(build(PLY), "release.coat.1").pause()).isCloseTo(5 * 3600, within(1e-6));
    }

    @Test void whatTheMouldTakesIsOrdered() {
        BuildPlan plan = build(PLY);
        assertThat(plan.orders()).extracting(OrderEntry::name).contains("Surfacer", "Wax", "Film", "Csm450", "Laminating", "Mekp");
        OrderEntry wax = plan.orders().stream().filter(order -> order.name().equals("Wax")).findFirst().orElseThrow();
        assertThat(wax.stages()).containsExactly("release");
        assertThat(wax.amount()).isCloseTo(Plans.value(plan, "release.Wax.mass"), Percentage.withPercentage(1e-9));
    }
}
