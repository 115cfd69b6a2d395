package mouldwright.drawing.subject;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.TaskEntry;
import org.junit.jupiter.api.Test;

/** The programme on its axis. 2027-03-04 is a Thursday, as any calendar has it. */
class ProgrammeDrawingTest {

    private static final String BLOCK = """
            foam Pour { expansion 25 density 45 kg/m3 ratio 100 to 100 by volume parts 1.1 kg/l and 1.2 kg/l cream 40 s rise 200 s firm 30 min carve after 24 h lift 100 mm at most pot 1 kg at most }
            plug Block {
                units mm
                half sections
                day 8 h
                start 2027-03-04
                station A at 0 { 0 0  300 0 knuckle  300 250 knuckle  0 250 }
                station B at 400 like A
                fill Pour solid { overfill 10 }
            }
            """;

    private static final double DAY = 8 * 3600;

    private static TaskEntry task(int startDay, double start, int endDay, double end, double pause) {
        return new TaskEntry("t", "fill", "t", end - start, 1, start, end, pause, List.of(), false, startDay, endDay, Optional.empty(), List.of());
    }

    @Test void theThirdWorkingDayAfterAThursdayIsMonday() {
        BuildPlan plan = Plans.of(BLOCK);
        TimeAxis axis = new TimeAxis(plan.spec().shop(), plan.tasks());
        assertThat(axis.begin(task(3, 2 * DAY, 3, 2.5 * DAY, 0))).isCloseTo(4, within(1e-9));
        assertThat(axis.works(1)).isTrue();
        assertThat(axis.works(2)).isFalse();
        assertThat(axis.works(3)).isFalse();
        assertThat(axis.works(4)).isTrue();
    }

    @Test void workThatEndsOnFridayEveningCuresOverTheWeekend() {
        BuildPlan plan = Plans.of(BLOCK);
        TimeAxis axis = new TimeAxis(plan.spec().shop(), plan.tasks());
        assertThat(axis.ready(task(2, DAY, 2, 2 * DAY, 24 * 3600))).isCloseTo(1 + 8 / 24.0 + 1, within(1e-9));
    }

    @Test void thePoursOfABayStandInOneRow() {
        BuildPlan plan = Plans.of(BLOCK);
        long lifts = plan.tasks().stream().filter(task -> task.id().startsWith("fill.pour.A-B.")).count();
        assertThat(lifts).isGreaterThan(1);
        assertThat(Plans.words(Subjects.PROGRAMME.draw(plan, "c").getFirst().drawing()).map(words -> words.text())).contains("Pour bay A-B, " + lifts + " lifts");
    }

    @Test void theDatesOfTheAxisAreThoseOfTheJob() {
        assertThat(Plans.words(Subjects.PROGRAMME.draw(Plans.of(BLOCK), "c").getFirst().drawing()).map(words -> words.text())).contains("4 Mar");
    }
}
