package mouldwright.plan.spec;

import java.util.Objects;

/** Where a figure came from: a place in the spec, an entry of a material library, or a documented default.
 *  Every figure that leaves the engine can be followed back to origins. */
public sealed interface Origin {

    /** @return the origin in words, as printed in a derivation */
    String words();

    /** A place in a spec's own text.
     *  @param file    path as the project names it, with forward slashes; empty for text without a file
     *  @param line    line, counted from 1
     *  @param column  column, counted from 1
     *  @param source  that line's text without its line end */
    record Text(String file, int line, int column, String source) implements Origin {
        /** Refuses a place before the first line or column. */
        public Text {
            Objects.requireNonNull(file, "file");
            Objects.requireNonNull(source, "source");
            if (line < 1 || column < 1)
                throw new IllegalArgumentException("lines and columns count from 1: " + line + ":" + column);
        }

        @Override public String words() {
            return (file.isEmpty() ? "line " + line : file + ":" + line + ":" + column) + "  " + source.strip();
        }
    }

    /** An entry of a shared library: the supplier's figure, used by name.
     *  @param library   the library's name, such as {@code stock.polyester}
     *  @param material  the entry's name, such as {@code Pour36}
     *  @param place     where the figure stands in the library's text */
    record Library(String library, String material, Text place) implements Origin {
        /** Refuses missing parts. */
        public Library {
            Objects.requireNonNull(library, "library");
            Objects.requireNonNull(material, "material");
            Objects.requireNonNull(place, "place");
        }

        @Override public String words() {
            return library + " " + material + ", " + place.words();
        }
    }

    /** A documented default, taken because the spec is silent.
     *  @param reason  why this figure, in a sentence with its source */
    record Assumed(String reason) implements Origin {
        /** Refuses a default without a reason. */
        public Assumed {
            if (reason.isBlank())
                throw new IllegalArgumentException("a default needs its reason");
        }

        @Override public String words() {
            return "assumed: " + reason;
        }
    }
}
