package mouldwright.check;

import java.time.temporal.ChronoUnit;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Wanted;

/** MW822: the programme ends before the day on which its work is wanted: it stands about meanwhile. */
final class ReadyTooSoon implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        Wanted wanted = plan.spec().shop().wanted();
        wanted.after().ifPresent(after -> ReadyTooLate.end(plan).filter(end -> end.isBefore(after)).ifPresent(end -> out.add(new Finding("MW822", Severity.INFO,
                wanted.afterPlace(), "all is done and cured on " + end + ", " + ChronoUnit.DAYS.between(end, after) + " d before " + after, "start later, or leave the mould on the plug longer"))));
    }
}
