package mouldwright.plan.spec;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Stiffeners of one kind on the back of a mould: box sections over a core or a hollow former.
 *  @param run    the way they run
 *  @param width  of the core on the mould, metres
 *  @param height of the core off the mould, metres
 *  @param pitch  how they are spread over each part of the mould
 *  @param core   what they are laid over
 *  @param plies  laid over them, in order
 *  @param lap    over the mould on either side, metres
 *  @param cured  how long the laminate cures before they are laid, seconds; empty where nothing is stated
 *  @param origin where stated */
public record Stiffener(Run run, Given width, Given height, Pitch pitch, Core core, List<Mat> plies, Given lap, Optional<Given> cured,
        Origin origin) {

    /** The way stiffeners run. */
    public enum Run {
        /** Round the girth. */ ACROSS,
        /** Along the body. */ ALONG
    }

    /** How stiffeners are spread. */
    public sealed interface Pitch {
        /** No farther from one to the next, and from the edge to the first, than this.
         *  @param spacing metres */
        record Every(Given spacing) implements Pitch { }

        /** So many on each part, evenly.
         *  @param count 1 at least */
        record Count(Given count) implements Pitch { }
    }

    /** What stiffeners are laid over. */
    public sealed interface Core {
        /** A former that adds no strength: paper, cardboard, tube. */
        record Hollow() implements Core { }

        /** Strips of a sheet, side by side on edge. */
        record Cut(Sheet sheet) implements Core { }
    }

    /** Copies its list. */
    public Stiffener {
        Objects.requireNonNull(run, "run");
        Objects.requireNonNull(pitch, "pitch");
        Objects.requireNonNull(core, "core");
        Objects.requireNonNull(cured, "cured");
        plies = List.copyOf(plies);
    }
}
