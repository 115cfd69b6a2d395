package mouldwright.exchange.table;

import java.util.List;
import java.util.Optional;
import mouldwright.exchange.Fault;

/** A table of offsets, or why there is none.
 *  @param table  present when there is no fault
 *  @param faults all that was found */
public record TableResult(Optional<OffsetTable> table, List<Fault> faults) {
    /** Keeps its own copy. */
    public TableResult {
        faults = List.copyOf(faults);
    }
}
