package mouldwright.plan;

import java.util.List;
import mouldwright.geometry.plane.PlanePoint;

/** A plate as listed.
 *  @param station    whose plate it is
 *  @param stands     {@code aft} or {@code forward} of its station line
 *  @param thickness  of the sheet as measured, m
 *  @param gap        largest gap a square edge leaves in the station plane, m; 0 for a bevelled edge
 *  @param gapNormal  the same along the surface normal, m
 *  @param outline    cut line in the station plane, m, counter-clockwise seen from aft */
public record PlateEntry(String station, String stands, double thickness, double gap, double gapNormal,
        List<PlanePoint> outline) {
    /** Copies its list. */
    public PlateEntry {
        outline = List.copyOf(outline);
    }
}
