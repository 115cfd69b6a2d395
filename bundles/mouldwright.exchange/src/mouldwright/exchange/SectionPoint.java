package mouldwright.exchange;

import java.util.Objects;
import java.util.Optional;

/** A point of a section as it was read.
 *  @param y       half-breadth, or signed breadth, metres
 *  @param z       height above base, metres
 *  @param knuckle whether the outline has a corner here
 *  @param line    the named line that runs through it */
public record SectionPoint(double y, double z, boolean knuckle, Optional<String> line) {
    /** Refuses a missing part. */
    public SectionPoint {
        Objects.requireNonNull(line, "line");
    }

    /** A point the outline passes smoothly. */
    public static SectionPoint smooth(double y, double z) {
        return new SectionPoint(y, z, false, Optional.empty());
    }

    /** A corner on no named line. */
    public static SectionPoint corner(double y, double z) {
        return new SectionPoint(y, z, true, Optional.empty());
    }

    /** Distance to another point, metres. */
    public double distance(SectionPoint other) {
        return Math.hypot(y - other.y, z - other.z);
    }
}
