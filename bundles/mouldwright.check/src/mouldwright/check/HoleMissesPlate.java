package mouldwright.check;

import java.util.List;
import java.util.stream.Collectors;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.stage.FrameMeasures;

/** MW214: a hole whose place is stated is meant for every plate; where it does not fit, that plate is not lined up by it. */
final class HoleMissesPlate implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().frame().filter(frame -> !frame.fittings().places().isEmpty()).ifPresent(frame -> plan.measurements().find(FrameMeasures.class).ifPresent(made -> {
            for (int i = 0; i < made.holes().size(); i++) {
                PlanePoint place = made.holes().get(i);
                List<String> missed = made.plates().stream().filter(one -> !one.holes().contains(place)).map(one -> one.border().name()).toList();
                if (!missed.isEmpty())
                    out.warn("MW214", frame.fittings().places().get(i).y().origin(), "hole of " + Findings.length(frame.fittings().holes().likely()) + " at "
                            + Findings.length(place.y()) + " and " + Findings.length(place.z()) + " does not fit in "
                            + missed.stream().collect(Collectors.joining(", ")) + ": it needs as much wood round it as it is wide, 10 mm at least",
                            "move it to where every plate has wood, or leave the places out to have them found");
            }
        }));
    }
}
