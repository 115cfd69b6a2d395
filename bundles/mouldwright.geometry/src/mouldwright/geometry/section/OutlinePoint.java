package mouldwright.geometry.section;

import java.util.Optional;

/** One given point of a section's outline.
 *
 *  @param y       half-breadth, metres, to starboard positive
 *  @param z       height above the base, metres
 *  @param knuckle whether the outline may turn a corner here
 *  @param radius  radius the corner is rounded to, metres; 0 leaves it sharp; used only at a knuckle
 *  @param line    the longitudinal line this point lies on, if any; without a knuckle the line borders a stretch but
 *                 does not crease it
 *  @param bare    whether the knuckle-delimited stretch that ends here gets neither skin nor surfacer */
public record OutlinePoint(double y, double z, boolean knuckle, double radius, Optional<String> line, boolean bare) {

    /** A point the outline passes smoothly; metres. */
    public static OutlinePoint smooth(double y, double z) {
        return new OutlinePoint(y, z, false, 0, Optional.empty(), false);
    }

    /** A sharp corner; metres. */
    public static OutlinePoint knuckle(double y, double z) {
        return new OutlinePoint(y, z, true, 0, Optional.empty(), false);
    }

    /** The same point on a longitudinal line. */
    public OutlinePoint on(String name) {
        return new OutlinePoint(y, z, knuckle, radius, Optional.of(name), bare);
    }

    /** The same point as a corner rounded to a radius in metres. */
    public OutlinePoint rounded(double cornerRadius) {
        return new OutlinePoint(y, z, true, cornerRadius, line, bare);
    }

    /** The same point with a bare stretch ending at it. */
    public OutlinePoint afterBare() {
        return new OutlinePoint(y, z, knuckle, radius, line, true);
    }
}
