package mouldwright.plan.spec;

import java.util.Objects;

/** Something a spec was read with though its text is silent, and of which the spec keeps nothing but what came of it. A default that
 *  a spec keeps as a {@link Given} is not among these: its own origin says so. */
public sealed interface Tacit {

    /** A choice in words.
     *  @param name  what was chosen
     *  @param words what it was taken as
     *  @param why   the default and its reason */
    record Choice(String name, String words, Origin.Assumed why) implements Tacit {
        /** Refuses missing parts. */
        public Choice {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(words, "words");
            Objects.requireNonNull(why, "why");
        }
    }

    /** A figure whose origin is {@link Origin.Assumed}. */
    record Figure(Given given) implements Tacit {
        /** Refuses a figure that was stated. */
        public Figure {
            if (!given.assumed())
                throw new IllegalArgumentException(given.name() + " was stated");
        }
    }
}
