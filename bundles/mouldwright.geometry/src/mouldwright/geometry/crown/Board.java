package mouldwright.geometry.crown;

import mouldwright.geometry.loft.SurfacePoint;

/** How a board lies between plates. */
interface Board {
    /** Height of the surface over the board along the outward normal, metres.
     *  @param stretch @param u the share round the section along which the board is laid
     *  @param point  the surface there */
    double height(int stretch, double u, SurfacePoint point);
}
