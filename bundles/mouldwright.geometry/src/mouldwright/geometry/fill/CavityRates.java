package mouldwright.geometry.fill;

/** How fast the volume poured into a cavity changes with what it was measured with, at what it was measured with.
 *
 *  @param buildUp as the build-up grows that lies over everything not bare, cubic metres per metre
 *  @param foreEnd as its forward end moves aft, cubic metres per metre
 *  @param aftEnd  as its after end moves aft, cubic metres per metre
 *  @param scale   as the body grows about x = y = z = 0 and carries both ends along, while build-up, overfill, shell and
 *                 backbones stay as they are, cubic metres per unit of scale
 *  @param plates  as the plates get thicker under the overfill on their edges, the clear length apart, cubic metres per metre */
public record CavityRates(double buildUp, double foreEnd, double aftEnd, double scale, double plates) { }
