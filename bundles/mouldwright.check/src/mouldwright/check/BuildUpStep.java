package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Skin;

/** MW205: the plates are moved in by the plies over them; where a local ply ends the skin steps, and a step of more than half a millimetre shows through surfacer.
 *  A ply that ends only where all plies end makes no step. */
final class BuildUpStep implements Check {

    private static final double LIMIT = 0.0005;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().skin().ifPresent(skin -> {
            for (Skin.Rule rule : skin.rules())
                if (rule instanceof Skin.Rule.AddPlies add && PlyEdges.of(plan.spec(), add).filter(edges -> !edges.all().isEmpty()).isPresent())
                    examine(add, skin.schedule().resin(), out);
        });
    }

    private static void examine(Skin.Rule.AddPlies add, Resin resin, Findings out) {
        double step = add.count() * Laminates.cured(add.mat(), resin);
        if (step > LIMIT)
            out.warn("MW205", add.span().origin(), "step of " + Findings.length(step) + " where the " + (add.count() == 1 ? "ply" : "plies") + " of " + add.mat().name() + " from "
                    + add.span().from() + " to " + add.span().to() + " end, " + Findings.length(LIMIT) + " at most", "lay a lighter mat, stagger the plies, or tear and feather the edge");
    }
}
