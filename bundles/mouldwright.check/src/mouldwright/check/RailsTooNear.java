package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.CutParts;
import mouldwright.plan.spec.Given;

/** MW215: rails so near each other that no cross-member goes between them make no ladder, and twist. */
final class RailsTooNear implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().frame().flatMap(frame -> frame.fittings().strongback()).ifPresent(ladder -> plan.measurements().find(CutParts.class).ifPresent(cut -> {
            boolean rails = cut.members().stream().anyMatch(member -> member.key().equals("strongback.rail"));
            boolean crossed = cut.members().stream().anyMatch(member -> member.key().equals("strongback.cross"));
            if (rails && !crossed)
                out.warn("MW215", ladder.origin(), "rails " + ladder.apart().map(Given::likely).map(apart -> Findings.length(apart) + " apart over all ").orElse("")
                        + "leave no room between them, each " + Findings.length(ladder.width().likely()) + " wide: the strongback has no cross-members and twists",
                        "state `apart` at two thirds of the breadth of the plates");
        }));
    }
}
