package mouldwright.geometry.section;

/** A place on a stretch with its derivatives by u, the share of the stretch's arc length.
 *
 *  @param y   metres to starboard
 *  @param z   metres above the base
 *  @param dy  dy/du, metres
 *  @param dz  dz/du, metres
 *  @param ddy second derivative, metres
 *  @param ddz second derivative, metres */
public record CurvePoint(double y, double z, double dy, double dz, double ddy, double ddz) { }
