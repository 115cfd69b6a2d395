package mouldwright.plan.spec;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** The shape of the plug: what the loft is made of. Lengths in metres.
 *  @param sections  half or full
 *  @param lines     lines along the body
 *  @param bare      bands where nothing is moulded
 *  @param forward   whether the forward end is moulded
 *  @param aft       whether the aft end is moulded
 *  @param runOut    how far the plug runs past each finished edge
 *  @param trim      distance of the scribed trim line
 *  @param shrink    total shrink of mould and part allowed for, a share
 *  @param stations  in the order of the text */
public record Body(Sections sections, List<Line> lines, List<Band> bare, End forward, End aft, Optional<Given> runOut,
        Optional<Given> trim, Given shrink, List<Station> stations) {

    /** How much of a section is stated. */
    public enum Sections {
        /** Bottom centre round the starboard side to top centre, mirrored. */ HALF,
        /** All round, from bottom centre, starboard side first. */ FULL
    }

    /** A line along the body.
     *  @param title in words */
    public record Line(String name, Optional<String> title, Origin origin) { }

    /** What becomes of an end face. */
    public record End(boolean moulded, Origin origin) { }

    /** Copies its lists. */
    public Body {
        Objects.requireNonNull(sections, "sections");
        lines = List.copyOf(lines);
        bare = List.copyOf(bare);
        Objects.requireNonNull(forward, "forward end");
        Objects.requireNonNull(aft, "aft end");
        Objects.requireNonNull(shrink, "shrink");
        stations = List.copyOf(stations);
    }
}
