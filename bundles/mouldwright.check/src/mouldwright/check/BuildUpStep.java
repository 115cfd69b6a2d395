package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Skin;
import mouldwright.process.Laminate;

/** MW205: the plates are moved in by the plies over them; where a local ply ends the skin steps, and a step of more than half a millimetre shows through surfacer. */
final class BuildUpStep implements Check {

    private static final double LIMIT = 0.0005;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().skin().ifPresent(skin -> {
            for (Skin.Rule rule : skin.rules())
                if (rule instanceof Skin.Rule.AddPlies add)
                    examine(add, skin.schedule().resin(), out);
        });
    }

    private static void examine(Skin.Rule.AddPlies add, Resin resin, Findings out) {
        double step = add.count() * thickness(add.mat(), resin);
        if (step > LIMIT)
            out.warn("MW205", add.span().origin(), "step of " + Findings.length(step) + " where the " + (add.count() == 1 ? "ply" : "plies") + " of " + add.mat().name() + " from "
                    + add.span().from() + " to " + add.span().to() + " end, " + Findings.length(LIMIT) + " at most", "lay a lighter mat, stagger the plies, or tear and feather the edge");
    }

    private static double thickness(Mat mat, Resin resin) {
        return Laminate.curedThickness(mat.areal().likely(), mat.glass().likely(), new Laminate.Densities(mat.fibre().likely(), resin.cured().likely()));
    }
}
