package mouldwright.geometry.loft;

import java.util.List;
import java.util.Optional;

/** A lofted body, or why there is none.
 *
 *  @param loft   present when there is no fault
 *  @param faults all that was found */
public record LoftResult(Optional<Loft> loft, List<LoftFault> faults) {
    /** Keeps its own copy. */
    public LoftResult { faults = List.copyOf(faults); }
}
