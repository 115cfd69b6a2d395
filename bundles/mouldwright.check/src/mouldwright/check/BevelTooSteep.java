package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.stage.ShapeMeasures;
import mouldwright.units.Dimension;

/** MW210: an edge bevelled more than 45 degrees is thin wood that neither holds its shape nor guides a board. */
final class BevelTooSteep implements Check {

    private static final double LIMIT = Math.toRadians(45);

    @Override public void examine(BuildPlan plan, Findings out) {
        if (plan.spec().frame().isEmpty())
            return;
        plan.measurements().find(ShapeMeasures.class).ifPresent(shape -> {
            for (ShapeMeasures.AtStation at : shape.stations())
                if (!at.pinched() && at.station().plated() && at.bevel() > LIMIT)
                    out.warn("MW210", at.station().origin(), "bevel of " + Findings.figure(at.bevel(), Dimension.ANGLE) + " at " + at.station().name() + ", "
                            + Findings.figure(LIMIT, Dimension.ANGLE) + " at most: the edge is too thin to guide a board",
                            "move the plate to where the body is fuller, or mark the station unplated");
        });
    }
}
