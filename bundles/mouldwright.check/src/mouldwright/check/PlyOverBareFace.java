package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.stage.SkinMeasures;
import mouldwright.units.Dimension;

/** MW506: a ply asked for over what is bare. Nothing is laid there, so either the band or what is bare is not what was meant. A rule without a band
 *  means the moulded face and is no such thing. */
final class PlyOverBareFace implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.measurements().find(SkinMeasures.class).ifPresent(measured -> measured.overBare().stream()
                .filter(each -> each.area() > FaceUncovered.NOTHING).forEach(each -> out.warn("MW506", each.rule().span().origin(),
                        "ply of " + each.rule().mat().name() + " asked for over " + Findings.figure(each.area(), Dimension.AREA)
                                + " that is bare, where none is laid", "let its `girth` begin and end on the moulded face")));
    }
}
