package mouldwright.plan.stage;

import java.util.List;
import mouldwright.geometry.frame.Plate;
import mouldwright.geometry.plane.PlanePoint;

/** What is measured on the bulkheads.
 *  @param plates         in station order; those that cannot be cut are left out and reported
 *  @param backboneLength of each lengthwise member, over all plates, m */
public record FrameMeasures(List<Made> plates, double backboneLength) {

    /** A plate with what is cut out of it.
     *  @param netArea  less pocket and slots, m2
     *  @param pocketed whether a pocket is cut
     *  @param centre   of the wood that is left, slots as if filled again, m */
    public record Made(Border border, Plate plate, double netArea, boolean pocketed, PlanePoint centre) { }

    /** Copies its list. */
    public FrameMeasures {
        plates = List.copyOf(plates);
    }
}
