package mouldwright.plan.spec;

import java.util.List;
import java.util.Objects;

/** Surfacing of the skin.
 *  @param coats        in order
 *  @param grits        of sanding, in order, coarse first
 *  @param sandedShare  share of the dry film that is sanded away again, 0 to 1
 *  @param origin       of the block */
public record Finish(List<Coats> coats, List<Integer> grits, Given sandedShare, Origin origin) {

    /** Several coats of one thing.
     *  @param count at least 1 */
    public record Coats(int count, Coating coating, Origin origin) {
        /** Refuses less than one coat. */
        public Coats {
            Objects.requireNonNull(coating, "coating");
            if (count < 1)
                throw new IllegalArgumentException("at least one coat: " + count);
        }
    }

    /** Copies its lists. */
    public Finish {
        coats = List.copyOf(coats);
        grits = List.copyOf(grits);
        Objects.requireNonNull(sandedShare, "sanded share");
    }
}
