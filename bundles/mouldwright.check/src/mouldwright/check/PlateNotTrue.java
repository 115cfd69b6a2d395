package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.Quantity;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.FrameDefaults;
import mouldwright.plan.spec.Given;
import mouldwright.plan.stage.FairMeasures;

/** MW442: the plywood is the reference; a plate that leans or stands off its height carries the carved surface with it. */
final class PlateNotTrue implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        Given tolerance = plan.spec().frame().map(Frame::tolerance).orElseGet(FrameDefaults::tolerance);
        plan.measurements().find(FairMeasures.class).ifPresent(found -> found.plates().forEach(plate -> examine(plate, tolerance.likely(), plan, out)));
    }

    private static void examine(FairMeasures.PlateError plate, double tolerance, BuildPlan plan, Findings out) {
        double lean = plate.lean().likely();
        double high = plate.high().likely();
        if (Math.max(Math.abs(lean), Math.abs(high)) <= tolerance)
            return;
        double error = plan.quantity("station." + plate.station() + ".error").map(Quantity::value).orElse(plate.error());
        String how = Math.abs(lean) > tolerance ? "leans " + Findings.length(Math.abs(lean)) + (lean > 0 ? " aft" : " forward")
                : "stands " + Findings.length(Math.abs(high)) + (high > 0 ? " high" : " low");
        out.warn("MW442", plate.origin(), "plate " + plate.station() + " " + how + ", " + Findings.length(tolerance) + " at most: carved to it the surface is up to "
                + Findings.length(Math.abs(error)) + (error >= 0 ? " proud" : " low") + " at " + Math.round(100 * plate.share()) + " % of the girth",
                "set the plate true before the next pour, or carve to a gauge there");
    }
}
