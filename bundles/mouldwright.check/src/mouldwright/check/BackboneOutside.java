package mouldwright.check;

import java.util.List;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.stage.FrameMeasures;

/** MW209: a backbone that reaches out of a plate stands proud of the foam, and of the skin. */
final class BackboneOutside implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().frame().ifPresent(frame -> plan.measurements().find(FrameMeasures.class).ifPresent(made ->
                frame.backbones().forEach(backbone -> made.plates().forEach(one -> examine(frame, backbone, one, out)))));
    }

    private static void examine(Frame frame, Frame.Backbone backbone, FrameMeasures.Made one, Findings out) {
        Outline cut = one.plate().cut();
        double half = frame.builtWidth(backbone) / 2, low = backbone.above().likely(), high = low + backbone.depth().likely();
        double past = 0;
        for (PlanePoint corner : List.of(new PlanePoint(-half, low), new PlanePoint(half, low), new PlanePoint(half, high), new PlanePoint(-half, high)))
            if (!cut.contains(corner))
                past = Math.max(past, cut.distance(corner));
        if (past > 0)
            out.warn("MW209", backbone.origin(), "backbone from " + Findings.length(low) + " to " + Findings.length(high) + " above base reaches " + Findings.length(past)
                    + " out of plate " + one.border().name() + ", which stands from " + Findings.length(cut.minZ()) + " to " + Findings.length(cut.maxZ()),
                    "move it, make it less deep, or mark the station unplated");
    }
}
