package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.stage.SkinMeasures;
import mouldwright.units.Dimension;

/** MW502: fewer plies than a `require` asks for. */
final class FaceShortOfPlies implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().skin().ifPresent(skin -> plan.measurements().find(SkinMeasures.class)
                .filter(m -> m.lacking().value() - m.uncovered().value() > FaceUncovered.NOTHING)
                .ifPresent(m -> out.warn("MW502", skin.origin(), Findings.figure(m.lacking().value(), Dimension.AREA) + " has fewer plies than required"
                        + FaceUncovered.where(m, Integer.MAX_VALUE), "add plies there", AddedPlies.over(plan, skin, m, gap -> gap.laid() < gap.asked()))));
    }
}
