package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.stage.FairMeasures;

/** MW444: what was mended and not measured again is only hoped to be right, and the skin hides it. */
final class NotMeasuredAgain implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.measurements().find(FairMeasures.class).ifPresent(found -> found.places().stream()
                .filter(place -> place.mended().filter(mended -> mended.now().isEmpty()).isPresent())
                .forEach(place -> out.warn("MW444", place.origin(), place.words() + " was mended on " + place.mended().orElseThrow().day() + " and not measured since",
                        "measure it against the gauge and state it with `now`")));
    }
}
