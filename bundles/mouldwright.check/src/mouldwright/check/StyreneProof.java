package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Coating;
import mouldwright.plan.spec.Finish;

/** MW711: gel coat laid on a lacquer that styrene dissolves takes the plug's face with it. What cures with styrene itself, surfacer or gel coat, stands it; of
 *  anything else nobody has said so. */
final class StyreneProof implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().mould().ifPresent(mould -> plan.spec().finish().filter(finish -> !finish.coats().isEmpty()).ifPresent(finish -> {
            Finish.Coats last = finish.coats().getLast();
            if (!proof(last.coating()))
                out.add(new Finding("MW711", Severity.INFO, last.origin(), last.coating().name() + " is the last coat under the release, and states no styrene: is it proof against it?",
                        "finish with a polyester surfacer, or try gel coat on a waxed sample first"));
        }));
    }

    private static boolean proof(Coating coating) {
        return coating.styrene().isPresent();
    }
}
