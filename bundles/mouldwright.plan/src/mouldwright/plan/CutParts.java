package mouldwright.plan;

import java.util.List;
import mouldwright.geometry.frame.PlatePart;

/** Everything of a frame that is cut to size, once measured.
 *  @param parts    out of sheets: plates in station order, then lengthwise members, straps beside what they join, then the base
 *  @param members  out of timber
 *  @param jointed  keys of parts that are larger than their sheet and were cut into pieces
 *  @param tooLarge keys of parts that no joints make fit their sheet */
public record CutParts(List<PlatePart> parts, List<Member> members, List<String> jointed, List<String> tooLarge) {
    /** Copies its lists. */
    public CutParts {
        parts = List.copyOf(parts);
        members = List.copyOf(members);
        jointed = List.copyOf(jointed);
        tooLarge = List.copyOf(tooLarge);
    }
}
