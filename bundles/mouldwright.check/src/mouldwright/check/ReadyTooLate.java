package mouldwright.check;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.TaskEntry;
import mouldwright.plan.spec.Wanted;

/** MW821: the programme ends after the day the spec states, or nobody can tell since it states no first day. */
final class ReadyTooLate implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        Wanted wanted = plan.spec().shop().wanted();
        wanted.by().ifPresent(by -> {
            if (plan.spec().shop().start().isEmpty())
                out.warn("MW821", wanted.byPlace(), "ready by " + by + ", and no first day is stated to count from", "state `start` and its day");
            else
                end(plan).filter(end -> end.isAfter(by)).ifPresent(end -> out.warn("MW821", wanted.byPlace(),
                        "all is done and cured on " + end + ", " + ChronoUnit.DAYS.between(by, end) + " d after " + by, "start earlier, add to the crew or cut a wait"));
        });
    }

    /** The day on which the last wait is over. */
    static Optional<LocalDate> end(BuildPlan plan) {
        return plan.tasks().stream().map(TaskEntry::dates).flatMap(Optional::stream).map(TaskEntry.Dates::ready).max(LocalDate::compareTo);
    }
}
