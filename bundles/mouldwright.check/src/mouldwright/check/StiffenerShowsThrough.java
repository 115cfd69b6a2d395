package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Stiffener;

/** MW621: stiffeners show through a thin laminate. Five cured layers at least lie under them (Practical Boat Owner, May 2018). */
final class StiffenerShowsThrough implements Check {

    private static final int LEAST = 5;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().mould().filter(mould -> !mould.stiffeners().isEmpty() && mould.schedule().plies().size() < LEAST).ifPresent(mould -> {
            Stiffener first = mould.stiffeners().getFirst();
            int plies = mould.schedule().plies().size();
            out.warn("MW621", first.origin(), "stiffeners on " + plies + (plies == 1 ? " ply" : " plies") + ", " + LEAST + " at least: they show through the face", "add plies to " + mould.schedule().name());
        });
    }
}
