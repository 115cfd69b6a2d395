package mouldwright.geometry.section;

import java.util.List;
import java.util.Optional;

/** A section, or why there is none.
 *
 *  @param section present unless a fault is blocking
 *  @param faults  all that was found, blocking or not */
public record SectionResult(Optional<Section> section, List<SectionFault> faults) {
    /** Keeps its own copy. */
    public SectionResult { faults = List.copyOf(faults); }
}
