package mouldwright.check;

import mouldwright.plan.BuildPlan;

/** MW520: a resin without wax stays tacky in air and clogs the paper. Where surfacer goes over the skin first, that is what is sanded. */
final class SandedTacky implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().skin().filter(skin -> !skin.schedule().resin().waxed()).ifPresent(skin -> plan.spec().finish()
                .filter(finish -> finish.coats().isEmpty() && !finish.grits().isEmpty()).ifPresent(finish -> out.warn("MW520", finish.origin(),
                        "the skin is sanded bare, and " + skin.schedule().resin().name() + " has no wax: it stays tacky and clogs the paper",
                        "lay the last ply with a waxed resin, or put a coat of surfacer on first")));
    }
}
