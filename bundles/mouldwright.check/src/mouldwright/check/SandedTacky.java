package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Finish;

/** MW520: a resin without wax stays tacky in air and clogs the paper. Where surfacer goes over the skin first, that is what is sanded. */
final class SandedTacky implements Check {

    /** A coat of waxed resin over the last ply, declared beside the plug: the spec names none. */
    private static Fix waxed(BuildPlan plan, Finish finish) {
        return Fix.of("put a waxed coat on first", new Remedy.Insert(finish.origin(), Remedy.Side.INSIDE, "coat WaxedCoat"), new Remedy.Insert(plan.spec().origin(), Remedy.Side.AFTER,
                "\ncoating WaxedCoat \"Resin with wax, brushed\" {\n    density 1.13 kg/l\n    wet 200 um\n    dry 180 um\n    transfer 95 %\n    styrene 35 %\n    source \""
                        + Declared.SOURCE + "\"\n}"));
    }

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().skin().filter(skin -> !skin.schedule().resin().waxed()).ifPresent(skin -> plan.spec().finish()
                .filter(finish -> finish.coats().isEmpty() && !finish.grits().isEmpty()).ifPresent(finish -> out.warn("MW520", finish.origin(),
                        "the skin is sanded bare, and " + skin.schedule().resin().name() + " has no wax: it stays tacky and clogs the paper",
                        "lay the last ply with a waxed resin, or put a coat of surfacer on first", waxed(plan, finish))));
    }
}
