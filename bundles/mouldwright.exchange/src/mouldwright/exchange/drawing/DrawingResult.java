package mouldwright.exchange.drawing;

import java.util.List;
import java.util.Optional;
import mouldwright.exchange.Fault;

/** A drawing, or why there is none.
 *  @param drawing present when there is no fault
 *  @param faults  of the file as a whole; those of a layer are the layer's */
public record DrawingResult(Optional<Drawing> drawing, List<Fault> faults) {
    /** Keeps its own copy. */
    public DrawingResult {
        faults = List.copyOf(faults);
    }
}
