package mouldwright.plan;

import java.util.List;
import mouldwright.geometry.plane.PlanePoint;

/** A plate as listed.
 *  @param station    whose plate it is
 *  @param stands     {@code aft} or {@code forward} of its station line
 *  @param bevelled   whether the edge is bevelled from the cut line to the bevel line; else it is square
 *  @param thickness  of the sheet as measured, m
 *  @param gap        largest gap a square edge leaves in the station plane, m; 0 for a bevelled edge
 *  @param gapNormal  the same along the surface normal, m
 *  @param outline    cut line in the station plane, m, counter-clockwise seen from aft
 *  @param bevelLine  where a bevelled edge meets the smaller face; empty for a square edge */
public record PlateEntry(String station, String stands, boolean bevelled, double thickness, double gap, double gapNormal,
        List<PlanePoint> outline, List<PlanePoint> bevelLine) {
    /** Copies its lists. */
    public PlateEntry {
        outline = List.copyOf(outline);
        bevelLine = List.copyOf(bevelLine);
    }
}
