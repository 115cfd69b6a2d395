package mouldwright.geometry.loft;

/** Where on the surface of a body.
 *
 *  @param x       metres aft of the datum
 *  @param stretch which stretch of the outline, from 0
 *  @param u       share of that stretch, 0 to 1
 *  @param share   share of the half girth from bottom centre, 0 to 1
 *  @param port    whether on the port side; never for a half body, whose places lie on both sides */
public record SurfacePlace(double x, int stretch, double u, double share, boolean port) { }
