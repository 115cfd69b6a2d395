package mouldwright.plan.stage;

import java.util.List;
import mouldwright.geometry.frame.Plate;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;

/** What is measured on the bulkheads.
 *  @param plates         in station order; those that cannot be cut are left out and reported
 *  @param holes          places of the holes that line plates up, m; those that fit no plate too
 *  @param from           outer face of the first plate, m aft on the plug
 *  @param to             outer face of the last one, m aft on the plug */
public record FrameMeasures(List<Made> plates, List<PlanePoint> holes, double from, double to) {

    /** A plate with what is cut out of it.
     *  @param netArea  less pocket and slots, m2
     *  @param pocketed whether a pocket is cut
     *  @param centre   of the wood that is left, slots as if filled again, m
     *  @param wood     what is left of the cut line less pocket and slots
     *  @param holes    bored to line it up, where they fit it, m */
    public record Made(Border border, Plate plate, double netArea, boolean pocketed, PlanePoint centre, Region wood, List<PlanePoint> holes) {
        /** Copies its list. */
        public Made {
            holes = List.copyOf(holes);
        }

        /** The cut edge at the face on the station line. */
        public Outline atLine() {
            return plate.bevelLine().filter(line -> plate.larger() == Plate.Face.OTHER).orElse(plate.cut());
        }
    }

    /** Of each lengthwise member, over all plates, m. */
    public double backboneLength() {
        return to - from;
    }

    /** Copies its lists. */
    public FrameMeasures {
        plates = List.copyOf(plates);
        holes = List.copyOf(holes);
    }
}
