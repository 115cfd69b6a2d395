package mouldwright.plan.stage;

import java.util.List;
import mouldwright.geometry.frame.Plate;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;

/** What is measured on the bulkheads.
 *  @param plates         in station order; those that cannot be cut are left out and reported
 *  @param from           outer face of the first plate, m aft on the plug
 *  @param to             outer face of the last one, m aft on the plug */
public record FrameMeasures(List<Made> plates, double from, double to) {

    /** A plate with what is cut out of it.
     *  @param netArea  less pocket and slots, m2
     *  @param pocketed whether a pocket is cut
     *  @param centre   of the wood that is left, slots as if filled again, m
     *  @param wood     what is left of the cut line less pocket and slots */
    public record Made(Border border, Plate plate, double netArea, boolean pocketed, PlanePoint centre, Region wood) { }

    /** Of each lengthwise member, over all plates, m. */
    public double backboneLength() {
        return to - from;
    }

    /** Copies its list. */
    public FrameMeasures {
        plates = List.copyOf(plates);
    }
}
