package mouldwright.geometry.crown;

import mouldwright.geometry.loft.SurfacePlace;

/** Where a surface stands furthest off a board.
 *
 *  @param height signed distance along the outward normal, metres: + the board cuts it off, - the board leaves foam high
 *  @param place  where */
public record CrownPeak(double height, SurfacePlace place) { }
