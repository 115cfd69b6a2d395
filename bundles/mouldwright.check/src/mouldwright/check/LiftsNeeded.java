package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.stage.FillMeasures;

/** MW309: a foam whose maker states no lift is poured in one go, whatever the height: deep pours scorch, and may burn. */
final class LiftsNeeded implements Check {

    /** Deeper than this without a stated lift is said; common practice pours in layers. */
    private static final double DEEP = 0.2;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().fill().filter(fill -> fill.foam().lift().isEmpty()).ifPresent(fill -> examine(fill, plan, out));
    }

    private static void examine(Fill fill, BuildPlan plan, Findings out) {
        plan.measurements().find(FillMeasures.class).ifPresent(measures -> measures.bays().stream().filter(bay -> bay.height() > DEEP).findFirst()
                .ifPresent(bay -> out.warn("MW309", fill.origin(), fill.foam().name() + " states no lift, and " + bay.bay().words() + " is " + Findings.length(bay.height())
                        + " deep: a deep pour scorches inside and may burn", "state the supplier's limit with `lift ... at most`",
                        Fix.of("pour in lifts of 200 mm until the supplier's limit is known", new Remedy.State(fill.foam().stock().origin(), "lift", "lift 200 mm at most")))));
    }
}
