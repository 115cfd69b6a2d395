package mouldwright.plan;

import java.util.List;
import mouldwright.geometry.frame.PlatePart;

/** Everything of a frame that is cut out of sheets, once measured.
 *  @param parts plates in station order, then lengthwise members, then what stands under them */
public record CutParts(List<PlatePart> parts) {
    /** Copies its list. */
    public CutParts {
        parts = List.copyOf(parts);
    }
}
