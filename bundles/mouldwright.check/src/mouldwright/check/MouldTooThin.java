package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.Quantity;

/** MW704: a mould that is not clearly stiffer than its part warps with the part's shrinkage and gives under a brush. At least twice the part: Practical
 *  Action, Fibreglass boat building, p.7. */
final class MouldTooThin implements Check {

    private static final double TIMES = 2;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().mould().ifPresent(spec -> plan.quantity("mould.thickness").ifPresent(mould -> plan.quantity("mould.part.thickness").ifPresent(part -> {
            if (mould.value() < TIMES * part.value())
                out.warn("MW704", spec.origin(), message(mould, part), "add plies to the mould's schedule");
        })));
    }

    private static String message(Quantity mould, Quantity part) {
        return "laminate of " + Findings.length(mould.value()) + " for a part of " + Findings.length(part.value()) + ", " + Findings.length(TIMES * part.value())
                + " at least: twice the part";
    }
}
