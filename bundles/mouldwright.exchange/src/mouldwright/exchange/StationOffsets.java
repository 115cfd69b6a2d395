package mouldwright.exchange;

import java.util.List;
import java.util.OptionalDouble;

/** A station's section as it was read.
 *  @param name   as written
 *  @param x      where it stands, metres aft of the datum; empty where the source does not say
 *  @param points from bottom centre round the starboard side */
public record StationOffsets(String name, OptionalDouble x, List<SectionPoint> points) {
    /** Keeps its own copy. */
    public StationOffsets {
        points = List.copyOf(points);
    }
}
