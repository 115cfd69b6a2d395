package mouldwright.check;

import java.util.List;
import java.util.Objects;
import mouldwright.plan.spec.Origin;

/** One thing to be done to a spec, said by places and words of the language; who knows the text turns it into an edit. Snippets are in canonical
 *  layout, their own lines indented from the first; amounts in them carry their units. */
public sealed interface Remedy {

    /** Where a snippet goes. */
    enum Side {
        /** Before what begins at the place. */
        BEFORE,
        /** After what begins at the place. */
        AFTER,
        /** Right behind what begins at the place, on its line. */
        BEHIND,
        /** As the last of the block that begins at the place. */
        INSIDE
    }

    /** Something is added.
     *  @param beside  the place of what is there already
     *  @param side    on which side of it
     *  @param snippet what is added */
    record Insert(Origin beside, Side side, String snippet) implements Remedy {
        /** Refuses missing parts. */
        public Insert {
            Objects.requireNonNull(beside, "beside");
            Objects.requireNonNull(side, "side");
            Objects.requireNonNull(snippet, "snippet");
        }
    }

    /** A block states a property: anew where it has it, as its last where it has not.
     *  @param block    the place of the block
     *  @param property the first word of it
     *  @param snippet  the whole of it */
    record State(Origin block, String property, String snippet) implements Remedy {
        /** Refuses missing parts. */
        public State {
            Objects.requireNonNull(block, "block");
            Objects.requireNonNull(property, "property");
            Objects.requireNonNull(snippet, "snippet");
        }
    }

    /** The whole of what begins at a place is written anew.
     *  @param place   of an amount, or of another part of the spec
     *  @param snippet what stands there instead */
    record Replace(Origin place, String snippet) implements Remedy {
        /** Refuses missing parts. */
        public Replace {
            Objects.requireNonNull(place, "place");
            Objects.requireNonNull(snippet, "snippet");
        }
    }

    /** What begins at a place is taken out, with its lines where it has them to itself.
     *  @param place of it */
    record Remove(Origin place) implements Remedy {
        /** Refuses no place. */
        public Remove {
            Objects.requireNonNull(place, "place");
        }
    }

    /** A library is used, unless it is already.
     *  @param library its name */
    record Use(String library) implements Remedy {
        /** Refuses no name. */
        public Use {
            Objects.requireNonNull(library, "library");
        }
    }

    /** Parts change places among themselves.
     *  @param order their places, in the order they are to stand in */
    record Reorder(List<Origin> order) implements Remedy {
        /** Takes a copy. */
        public Reorder {
            order = List.copyOf(order);
        }
    }
}
