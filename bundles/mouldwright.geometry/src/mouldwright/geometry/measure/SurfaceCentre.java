package mouldwright.geometry.measure;

/** A surface and its centroid, which lies in the middle plane of a half body.
 *
 *  @param area square metres
 *  @param x    metres aft
 *  @param z    metres above the base */
public record SurfaceCentre(Measured area, double x, double z) { }
