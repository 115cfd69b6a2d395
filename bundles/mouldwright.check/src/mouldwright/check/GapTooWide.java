package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.stage.FrameMeasures;

/** MW211: a square edge touches the foam line with one face only; past 4 mm of gap at the other the board has no edge to follow. */
final class GapTooWide implements Check {

    private static final double LIMIT = 0.004;

    @Override public void examine(BuildPlan plan, Findings out) {
        if (plan.spec().frame().filter(frame -> frame.edges() == Frame.Edges.SQUARE).isEmpty())
            return;
        plan.measurements().find(FrameMeasures.class).ifPresent(frame -> {
            for (FrameMeasures.Made made : frame.plates())
                if (made.plate().gapAlongNormal() > LIMIT)
                    out.warn("MW211", made.border().station().origin(), "gap of " + Findings.length(made.plate().gapAlongNormal()) + " at the square edge of "
                            + made.border().name() + ", " + Findings.length(LIMIT) + " at most: the plate leaves the surface unguided", "state `edges bevelled`",
                            Fix.of("state `edges bevelled`", new Remedy.State(plan.spec().frame().orElseThrow().origin(), "edges", "edges bevelled")));
        });
    }
}
