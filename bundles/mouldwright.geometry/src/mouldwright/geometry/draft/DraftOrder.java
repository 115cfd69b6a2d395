package mouldwright.geometry.draft;

import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.measure.SurfaceRegion;

/** A part of a mould to be looked at.
 *
 *  @param region    what it covers
 *  @param starboard whether it covers the starboard side
 *  @param port      whether it covers the port side
 *  @param bare      what of the body is not moulded
 *  @param pull      the way it leaves the plug
 *  @param limit     least draft wanted, radians */
public record DraftOrder(SurfaceRegion region, boolean starboard, boolean port, Bare bare, Pull pull, double limit) { }
