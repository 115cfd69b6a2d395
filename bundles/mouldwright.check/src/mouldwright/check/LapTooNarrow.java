package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Given;

/** MW505: a lap so narrow that pieces part at the seam when they are wetted and rolled. Laps of 50 mm are common on a plug, 75 to 100 mm in a
 *  mould (Practical Action, Fibreglass boat building). */
final class LapTooNarrow implements Check {

    private static final double LEAST = 0.050;
    /** Rounding of 2 in and the like, m. */
    private static final double ROUNDING = 1e-6;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().skin().ifPresent(skin -> {
            Given lap = skin.lap();
            if (lap.likely() < LEAST - ROUNDING)
                out.warn("MW505", lap.assumed() ? skin.origin() : lap.origin(), "lap of " + Findings.length(lap.likely()) + ", " + Findings.length(LEAST)
                        + " at least: the pieces may part at their seams", "state `lap` of " + Findings.length(LEAST),
                        Fix.stating(lap, skin.origin(), "lap", Findings.written(LEAST), ""));
        });
    }
}
