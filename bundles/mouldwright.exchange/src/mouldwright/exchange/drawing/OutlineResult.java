package mouldwright.exchange.drawing;

import java.util.List;
import mouldwright.exchange.Fault;
import mouldwright.exchange.SectionPoint;

/** The outline on a layer, or why there is none.
 *  @param points from bottom centre round the starboard side; none where there is a fault
 *  @param faults all that was found */
public record OutlineResult(List<SectionPoint> points, List<Fault> faults) {
    /** Keeps its own copies. */
    public OutlineResult {
        points = List.copyOf(points);
        faults = List.copyOf(faults);
    }
}
