package mouldwright.geometry.measure;

/** A volume and its centroid.
 *
 *  @param volume cubic metres
 *  @param x      metres aft
 *  @param y      metres to starboard
 *  @param z      metres above the base */
public record VolumeCentre(Measured volume, double x, double y, double z) { }
