package mouldwright.plan.spec;

import java.util.List;
import java.util.Objects;

/** The skin over the carved foam.
 *  @param schedule  plies laid everywhere on the moulded face
 *  @param lap       of neighbouring pieces, metres
 *  @param gel       gel time wanted, seconds
 *  @param onFoam    extra resin the first ply takes on cut foam, kg/m2
 *  @param rules     plies added and coverage asked for in places
 *  @param origin    of the block */
public record Skin(Schedule schedule, Given lap, Given gel, Given onFoam, List<Rule> rules, Origin origin) {

    /** Something that holds for part of the face. */
    public sealed interface Rule {
        /** @return from which station to which */
        BaySpan span();

        /** @return the band round the girth; the whole where none is stated */
        Band band();

        /** Plies laid over the general ones.
         *  @param mat    what is laid
         *  @param count  how many, at least 1 */
        record AddPlies(BaySpan span, Band band, Mat mat, int count) implements Rule {
            /** Refuses less than one ply. */
            public AddPlies {
                if (count < 1)
                    throw new IllegalArgumentException("at least one ply: " + count);
            }
        }

        /** Coverage asked for.
         *  @param plies how many plies must cover every point */
        record Require(BaySpan span, Band band, int plies) implements Rule {
            /** Refuses less than one ply. */
            public Require {
                if (plies < 1)
                    throw new IllegalArgumentException("at least one ply: " + plies);
            }
        }
    }

    /** Copies its list. */
    public Skin {
        Objects.requireNonNull(schedule, "schedule");
        rules = List.copyOf(rules);
    }
}
