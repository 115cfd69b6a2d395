package mouldwright.check;

import mouldwright.plan.BuildPlan;

/** MW212: plywood is seldom as thick as it is called, and slots, bevels and clear lengths go by what it measures. */
final class ThicknessNotMeasured implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().frame().filter(frame -> frame.thickness().assumed()).ifPresent(frame -> out.add(new Finding("MW212", Severity.INFO, frame.origin(),
                "the sheet is not measured: slots and bays are reckoned with the nominal " + Findings.length(frame.thickness().likely()) + " of " + frame.sheet().name(),
                "measure a sheet, and state `sheet " + frame.sheet().name() + " measured ...`")));
    }
}
