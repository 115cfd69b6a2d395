package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Carve;
import mouldwright.plan.stage.Bay;
import mouldwright.plan.stage.ShapeMeasures;

/** MW431: a board must lie on two plates at once, with a hand's breadth over. */
final class BoardTooShort implements Check {

    private static final double OVER = 0.1;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().carve().ifPresent(carve -> plan.measurements().find(ShapeMeasures.class).ifPresent(shape -> shape.bays().forEach(bay -> examine(bay, carve, out))));
    }

    private static void examine(Bay bay, Carve carve, Findings out) {
        double length = bay.aft().station().x() - bay.fore().station().x();
        if (length + OVER > carve.board().likely())
            out.warn("MW431", bay.aft().station().origin(), bay.words() + " is " + Findings.length(length) + " long, the board " + Findings.length(carve.board().likely())
                    + ": it does not reach over both plates", "use a longer board, or insert a plate");
    }
}
