package mouldwright.geometry.plane;

/** A place in a section plane.
 *
 *  @param y metres to starboard
 *  @param z metres above the base */
public record PlanePoint(double y, double z) {
    /** Straight distance, metres. */
    public double distance(PlanePoint other) {
        return Math.hypot(y - other.y, z - other.z);
    }
}
