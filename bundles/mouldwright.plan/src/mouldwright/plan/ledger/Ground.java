package mouldwright.plan.ledger;

import java.util.Objects;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.units.Dimension;

/** Something a measure of the geometry rests on: what the spec draws, a figure it was taken with, or another listed figure. */
public sealed interface Ground {

    /** @return in words, metric, with where it came from */
    String words();

    /** A part of the spec that draws the shape, such as a station's block.
     *  @param label  what it is
     *  @param origin where it is stated, its first line */
    record Part(String label, Origin origin) implements Ground {
        /** Refuses missing parts. */
        public Part {
            Objects.requireNonNull(label, "label");
            Objects.requireNonNull(origin, "origin");
        }

        @Override public String words() {
            return origin.words();
        }
    }

    /** A stated figure or default the measure was taken with, at its likely value. */
    record Figure(Given given) implements Ground {
        /** Refuses a missing figure. */
        public Figure {
            Objects.requireNonNull(given, "given");
        }

        @Override public String words() {
            return given.name() + " " + Figures.words(given.likely(), given.dimension()) + ", " + given.origin().words();
        }
    }

    /** A listed figure the measure was taken with, at its likely value.
     *  @param id     of the listed figure, whose own derivation says where it came from
     *  @param likely SI */
    record Listed(String id, String label, Dimension dimension, double likely) implements Ground {
        @Override public String words() {
            return label + " " + Figures.words(likely, dimension) + ", " + id;
        }
    }
}
