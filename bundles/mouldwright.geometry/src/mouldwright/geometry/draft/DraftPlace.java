package mouldwright.geometry.draft;

import mouldwright.geometry.loft.SurfacePlace;

/** A draft at a place.
 *
 *  @param angle     asin(n . p), radians, negative where the mould is caught
 *  @param place     where; of a half body on the side told
 *  @param portImage whether the mirror image of the place, on the port side of a half body, is meant */
public record DraftPlace(double angle, SurfacePlace place, boolean portImage) { }
