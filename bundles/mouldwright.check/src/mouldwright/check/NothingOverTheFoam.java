package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Finish;
import mouldwright.plan.spec.Mould;

/** MW513: no coverage is asked for at all: foam is poured to be finished or moulded, and nothing is laid over it. Surfacer and gel coat dissolve or soak into bare foam; common
 *  practice. */
final class NothingOverTheFoam implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        if (plan.spec().fill().isEmpty() || plan.spec().skin().isPresent())
            return;
        plan.spec().finish().map(Finish::origin).or(() -> plan.spec().mould().map(Mould::origin)).ifPresent(next -> out.warn("MW513", next, "the foam of " + plan.spec().fill().get().foam().name() + " has no skin over it, one ply at least: surfacer and gel coat soak into bare foam",
                    "state a `skin` and its schedule"));
    }
}
