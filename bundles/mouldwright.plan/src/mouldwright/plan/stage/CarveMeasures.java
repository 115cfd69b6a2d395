package mouldwright.plan.stage;

import java.util.List;
import java.util.Optional;
import mouldwright.geometry.crown.Crown;

/** What is measured for carving beside the crowns of {@link ShapeMeasures}.
 *  @param flexible bay by bay, what a board that bends over the plates would leave where a stiff one leaves too much; empty elsewhere */
public record CarveMeasures(List<Optional<Crown>> flexible) {
    /** Copies its list. */
    public CarveMeasures {
        flexible = List.copyOf(flexible);
    }
}
