package mouldwright.geometry.draft;

import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.ShareSet;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.measure.SurfaceRegion;
import mouldwright.geometry.section.SectionKind;

/** A part of a mould to be looked at.
 *
 *  @param region    what it covers
 *  @param starboard whether it covers the starboard side
 *  @param port      whether it covers the port side
 *  @param parted    of a part that covers one side of a full body: whether it ends at the lowest and highest place of each section,
 *                   where the normal stands square to a pull to port or starboard, instead of at bottom and top centre
 *  @param bare      what of the body is not moulded
 *  @param pull      the way it leaves the plug
 *  @param limit     least draft wanted, radians */
public record DraftOrder(SurfaceRegion region, boolean starboard, boolean port, boolean parted, Bare bare, Pull pull, double limit) {
    /** A part that ends at bottom and top centre, if it covers one side. */
    public DraftOrder(SurfaceRegion region, boolean starboard, boolean port, Bare bare, Pull pull, double limit) {
        this(region, starboard, port, false, bare, pull, limit);
    }

    /** What it covers of one side of a section, as shares of the half girth; what is bare is counted.
     *  @param side whether of the port side */
    public ShareSet shares(Slice slice, boolean side) {
        if (parted && starboard != port && slice.loft().kind() == SectionKind.FULL)
            return starboard ? slice.starboardShares(side) : slice.starboardShares(side).complement();
        return (side ? port : starboard) ? slice.shares(region.band(), side) : ShareSet.NOTHING;
    }
}
