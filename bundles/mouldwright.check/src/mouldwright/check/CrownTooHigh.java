package mouldwright.check;

import java.util.List;
import java.util.stream.Collectors;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Carve;
import mouldwright.plan.stage.Bay;
import mouldwright.plan.stage.ShapeMeasures;

/** MW412: a board laid from plate to plate takes the crown off, or leaves a hollow proud; flats between bulkheads show once the plug shines. */
final class CrownTooHigh implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().carve().ifPresent(carve -> plan.measurements().find(ShapeMeasures.class).ifPresent(shape -> {
            for (int i = 0; i < shape.crowns().size(); i++)
                examine(shape.bays().get(i), shape.crowns().get(i), shape.scale(), carve, plan, out);
        }));
    }

    private static void examine(Bay bay, ShapeMeasures.BayCrown crown, double scale, Carve carve, BuildPlan plan, Findings out) {
        double height = crown.crown().height();
        double limit = carve.crownLimit().likely();
        if (height <= limit)
            return;
        boolean convex = crown.crown().signedHeight() > 0;
        String effect = convex ? carve.flexible() ? "the board would flatten it" : "a straight board would flatten it" : "the board would leave it high";
        List<Double> at = crown.division().stations().stream().map(x -> x / scale).toList();
        String stations = at.stream().map(x -> Findings.length(x)).collect(Collectors.joining(", "));
        out.warn("MW412", bay.aft().station().origin(), (convex ? "crown" : "hollow") + " of " + Findings.length(height) + " between " + bay.fore().name() + " and "
                + bay.aft().name() + ", " + Findings.length(limit) + " at most: " + effect,
                stations.isEmpty() ? "" : "insert " + (crown.division().stations().size() == 1 ? "a lofted station at " : "lofted stations at ") + stations,
                StationInsert.of(plan.spec().body(), bay.fore().station(), bay.aft().station(), at));
    }
}
