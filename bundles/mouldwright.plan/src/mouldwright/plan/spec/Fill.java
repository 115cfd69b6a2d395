package mouldwright.plan.spec;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** How the bays are filled with foam.
 *  @param foam      the pour foam
 *  @param core      solid, or a shell round a packed pocket, where no bay rule says otherwise
 *  @param overfill  how far foam is poured past the foam line, metres
 *  @param bays      rules for single bays, later ones governing
 *  @param origin    of the block */
public record Fill(Foam foam, Core core, Given overfill, List<BayRule> bays, Origin origin) {

    /** What is inside a bay. */
    public sealed interface Core {
        /** Foam all through. */
        record Solid(Origin origin) implements Core { }

        /** Foam round a packed pocket.
         *  @param thickness of foam within the foam line, metres */
        record Shell(Given thickness) implements Core { }
    }

    /** How the plug lies while a bay is poured. */
    public enum Attitude {
        /** As it will stand on its base. */
        UPRIGHT("upright"),
        /** On its top. */
        UPSIDE_DOWN("upside down"),
        /** On its port side. */
        ON_SIDE("on side");

        private final String words;

        Attitude(String words) {
            this.words = words;
        }

        /** @return as written in a spec */
        public String words() {
            return words;
        }
    }

    /** What holds for the bays from one station to another.
     *  @param core      empty leaves the block's
     *  @param attitude  empty is upright */
    public record BayRule(BaySpan span, Optional<Core> core, Optional<Attitude> attitude) {
        /** Refuses missing parts. */
        public BayRule {
            Objects.requireNonNull(span, "span");
            Objects.requireNonNull(core, "core");
            Objects.requireNonNull(attitude, "attitude");
        }
    }

    /** Copies its list. */
    public Fill {
        Objects.requireNonNull(foam, "foam");
        Objects.requireNonNull(core, "core");
        bays = List.copyOf(bays);
    }
}
