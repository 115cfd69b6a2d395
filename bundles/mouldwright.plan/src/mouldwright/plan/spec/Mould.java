package mouldwright.plan.spec;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** The female mould laid up on the plug.
 *  @param schedule  its laminate
 *  @param draft     least draft, radians
 *  @param flange    width of a flange, metres
 *  @param parts     halves or the one piece; empty where the spec says nothing
 *  @param release   coats of release, in order
 *  @param hold      time the mould stays on the plug, seconds
 *  @param stiffeners on its back, kind by kind
 *  @param origin    of the block */
public record Mould(Schedule schedule, Given draft, Given flange, List<Part> parts, List<Finish.Coats> release,
        Given hold, List<Stiffener> stiffeners, Origin origin) {

    /** The way a part of the mould leaves the plug. */
    public enum Pull {
        /** Upward. */ UP,
        /** Downward. */ DOWN,
        /** To port. */ PORT,
        /** To starboard. */ STARBOARD,
        /** Forward. */ FORWARD,
        /** Aft. */ AFT
    }

    /** Which part of the face a half covers. */
    public sealed interface Reach {
        /** All of it. */
        record Everything() implements Reach { }

        /** Above a place round the girth. */
        record Above(Place place) implements Reach { }

        /** Below a place round the girth. */
        record Below(Place place) implements Reach { }

        /** What lies on the side it is pulled to. */
        record PullSide() implements Reach { }
    }

    /** One part of the mould.
     *  @param name empty for the one piece */
    public record Part(Optional<String> name, Reach reach, Pull pull, Origin origin) {
        /** Refuses missing parts. */
        public Part {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(reach, "reach");
            Objects.requireNonNull(pull, "pull");
        }
    }

    /** Copies its lists. */
    public Mould {
        parts = List.copyOf(parts);
        release = List.copyOf(release);
        stiffeners = List.copyOf(stiffeners);
    }

    /** A mould without stiffeners. */
    public Mould(Schedule schedule, Given draft, Given flange, List<Part> parts, List<Finish.Coats> release, Given hold, Origin origin) {
        this(schedule, draft, flange, parts, release, hold, List.of(), origin);
    }
}
