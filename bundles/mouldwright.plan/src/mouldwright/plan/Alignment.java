package mouldwright.plan;

import java.util.List;
import java.util.Optional;

/** What the plates are set up by and held to. Lengths in metres on the plug. Two datum points lie on the base, level with the line
 *  of the first plate, as far to port as to starboard.
 *  @param x         of the datum points, aft of the datum of the spec
 *  @param half      how far each lies off the centreline
 *  @param square    with which the first line is squared to the centreline
 *  @param tolerance of every figure, and of what the surveys read
 *  @param holes     that line the plates up on wires or rods
 *  @param rows      plate by plate */
public record Alignment(double x, double half, Square square, double tolerance, List<Hole> holes, List<Row> rows) {

    /** A hole at the same place of every plate it fits.
     *  @param y        to starboard
     *  @param z        above the base
     *  @param diameter of it
     *  @param without  stations of the plates it does not fit */
    public record Hole(double y, double z, double diameter, List<String> without) {
        /** Copies its list. */
        public Hole {
            without = List.copyOf(without);
        }
    }

    /** A right angle by 3, 4 and 5, laid off from where the first line crosses the centreline.
     *  @param across   along the line
     *  @param along    along the centreline
     *  @param diagonal between their ends */
    public record Square(double across, double along, double diagonal) { }

    /** A plate.
     *  @param station   whose it is
     *  @param stands    {@code aft} or {@code forward} of its line
     *  @param offset    of the face on its line, aft of the datum points
     *  @param height    of the line across it, above the base
     *  @param port      half-breadth of its port edge at that height
     *  @param starboard half-breadth of its starboard edge there
     *  @param toPort    diagonal from the starboard datum point to the port edge
     *  @param toStarboard diagonal from the port datum point to the starboard edge
     *  @param top       its highest place, above the base
     *  @param reading   the last a survey has of it */
    public record Row(String station, String stands, double offset, double height, double port, double starboard, double toPort, double toStarboard,
            double top, Optional<Reading> reading) { }

    /** How a plate stands.
     *  @param leans  its top out of plumb, + aft
     *  @param high   set high, low negative
     *  @param within whether both keep the tolerance */
    public record Reading(double leans, double high, boolean within) { }

    /** Copies its lists. */
    public Alignment {
        holes = List.copyOf(holes);
        rows = List.copyOf(rows);
    }
}
