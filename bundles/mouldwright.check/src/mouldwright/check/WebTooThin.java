package mouldwright.check;

import java.util.List;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.frame.PlatePart.Opening;
import mouldwright.geometry.plane.Crosscut;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.stage.FrameMeasures;

/** MW206: less than 20 mm of wood between the edge of a plate and a slot or pocket breaks while the plate is handled or clamped, and springs under the board;
 *  common practice. */
final class WebTooThin implements Check {

    private static final double LIMIT = 0.020;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().frame().ifPresent(frame -> plan.measurements().find(FrameMeasures.class).ifPresent(made -> made.plates().forEach(one -> {
            double web = web(plan, frame, one);
            if (web < LIMIT)
                out.warn("MW206", one.border().station().origin(), "web of " + Findings.length(web) + " in plate " + one.border().name() + " between its edge and "
                        + "a slot or pocket, " + Findings.length(LIMIT) + " at least: it breaks when the plate is handled", "widen the rim, or move the backbone inward");
        })));
    }

    private static double web(BuildPlan plan, Frame frame, FrameMeasures.Made one) {
        double web = one.pocketed() ? frame.rim().likely() : Double.POSITIVE_INFINITY;
        for (PlatePart part : plan.parts())
            if (part.key().equals("plate." + one.border().name()))
                for (Opening opening : part.openings())
                    if (opening.use() == Opening.Use.SLOT)
                        web = Math.min(web, slotted(part, opening));
        if (frame.backbones().stream().anyMatch(Frame.Backbone::halved)) {
            List<Crosscut.Span> above = Crosscut.upright(one.wood(), 0);
            web = above.isEmpty() ? web : Math.min(web, above.getFirst().length());
        }
        return web;
    }

    private static double slotted(PlatePart part, Opening slot) {
        double web = apart(slot.ring(), part.outer());
        for (Opening other : part.openings())
            if (other != slot)
                web = Math.min(web, apart(slot.ring(), other.ring()));
        return web;
    }

    private static double apart(Outline a, Outline b) {
        double least = Double.POSITIVE_INFINITY;
        for (PlanePoint p : a.points())
            least = Math.min(least, b.distance(p));
        for (PlanePoint p : b.points())
            least = Math.min(least, a.distance(p));
        return least;
    }
}
