package mouldwright.plan.stage;

import java.util.List;
import mouldwright.geometry.measure.Measured;

/** The room of each bay that is filled, and what shutters it in.
 *  @param bays      in order, as filled
 *  @param standoffs moulded girth of each plate's edge, m: what stand-offs are set along */
public record Rooms(List<Room> bays, List<Edge> standoffs) {

    /** The room of a bay.
     *  @param clear    length between the plates, m
     *  @param breadth  across, level, in the attitude it is poured in, overfill included, m
     *  @param height   across gravity, overfill included, m
     *  @param lifts    of equal height
     *  @param forms    area of the shuttering: the loft grown by the overfill, from station line to station line, m2
     *  @param pocket   volume to be packed, m3
     *  @param wrapping area of the packing, m2 */
    public record Room(Bay bay, double clear, double breadth, double height, int lifts, double forms, Measured pocket,
            double wrapping) {

        /** Narrower side of the level opening a pour is let in by, m. */
        public double opening() {
            return Math.min(clear, breadth);
        }
    }

    /** A plate's edge.
     *  @param moulded girth of its moulded runs, m */
    public record Edge(Border border, double moulded) { }

    /** Copies its lists. */
    public Rooms {
        bays = List.copyOf(bays);
        standoffs = List.copyOf(standoffs);
    }
}
