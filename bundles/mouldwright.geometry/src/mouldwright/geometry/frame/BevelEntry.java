package mouldwright.geometry.frame;

import mouldwright.geometry.loft.SurfacePlace;

/** A line of a bevel table.
 *
 *  @param place where on the station line
 *  @param y     of the surface there, metres
 *  @param z     of the surface there, metres
 *  @param angle asin(n_x), radians, positive where the body narrows going aft
 *  @param bare  whether the edge is bare there */
public record BevelEntry(SurfacePlace place, double y, double z, double angle, boolean bare) { }
