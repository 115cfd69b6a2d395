package mouldwright.plan.read;

import java.util.List;
import java.util.Optional;
import mouldwright.plan.spec.Spec;

/** What was read of a plug.
 *  @param spec     present unless a problem is blocking
 *  @param problems all that was found */
public record Reading(Optional<Spec> spec, List<ReadProblem> problems) {
    /** Copies its list. */
    public Reading {
        problems = List.copyOf(problems);
    }
}
