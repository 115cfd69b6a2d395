package mouldwright.check;

import java.util.List;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Given;

/** MW221: a margin on both sides that takes up a whole sheet leaves nothing to cut parts from. */
final class SheetAllMargin implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().frame().ifPresent(frame -> {
            Given margin = frame.sheet().margin().orElseGet(Defaults::margin);
            double narrow = Math.min(frame.sheet().width().likely(), frame.sheet().length().likely());
            if (!(2 * margin.likely() < narrow))
                out.add(new Finding("MW221", Severity.ERROR, frame.origin(), "margins of " + Findings.length(margin.likely()) + " leave nothing of a sheet of " + frame.sheet().name() + ", "
                        + Findings.length(narrow) + " wide", "state a `margin` of less than " + Findings.length(narrow / 2) + " in the sheet, or a larger `size`", List.of()));
        });
    }
}
