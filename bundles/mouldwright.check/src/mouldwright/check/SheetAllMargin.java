package mouldwright.check;

import java.util.List;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.FrameDefaults;
import mouldwright.plan.spec.Given;

/** MW221: a margin on both sides that takes up a whole sheet leaves nothing to cut parts from. */
final class SheetAllMargin implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().frame().ifPresent(frame -> {
            Given margin = frame.sheet().margin().orElseGet(FrameDefaults::margin);
            double narrow = Math.min(frame.sheet().width().likely(), frame.sheet().length().likely());
            if (leavesNothing(frame))
                out.add(new Finding("MW221", Severity.ERROR, frame.origin(), "margins of " + Findings.length(margin.likely()) + " leave nothing of a sheet of " + frame.sheet().name() + ", "
                        + Findings.length(narrow) + " wide", "state a `margin` of less than " + Findings.length(narrow / 2) + " in the sheet, or a larger `size`", List.of()));
        });
    }

    /** Whether no part can be cut from the sheet, however small. */
    static boolean leavesNothing(Frame frame) {
        return !(2 * frame.sheet().margin().orElseGet(FrameDefaults::margin).likely() < Math.min(frame.sheet().width().likely(), frame.sheet().length().likely()));
    }
}
