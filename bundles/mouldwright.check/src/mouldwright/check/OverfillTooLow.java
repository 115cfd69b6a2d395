package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.stage.ShapeMeasures;

/** MW308: foam is poured between forms laid straight from plate to plate; where the body bulges more than the overfill it is short of foam, and adding later is hard. */
final class OverfillTooLow implements Check {

    private static final double MARGIN = 0.005;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().fill().ifPresent(fill -> plan.measurements().find(ShapeMeasures.class).ifPresent(shape -> {
            for (int i = 0; i < shape.crowns().size(); i++) {
                double bulge = shape.crowns().get(i).crown().convex().map(peak -> peak.height()).orElse(0.0);
                double needed = bulge + MARGIN;
                if (fill.overfill().likely() < needed)
                    out.warn("MW308", shape.bays().get(i).aft().station().origin(), "overfill of " + Findings.length(fill.overfill().likely()) + " in "
                            + shape.bays().get(i).words() + ", crown of " + Findings.length(bulge) + " and " + Findings.length(MARGIN) + " to carve asks for "
                            + Findings.length(needed), "state `overfill` of " + Findings.length(Math.ceil(needed * 1000) / 1000),
                            Fix.stating(fill.overfill(), fill.origin(), "overfill", Findings.written(Math.ceil(most(shape) * 1000) / 1000), ""));
            }
        }));
    }

    /** What the bay that bulges most asks for, m: one figure serves all of them. */
    private static double most(ShapeMeasures shape) {
        return MARGIN + shape.crowns().stream().mapToDouble(each -> each.crown().convex().map(peak -> peak.height()).orElse(0.0)).max().orElse(0);
    }
}
