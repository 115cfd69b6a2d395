package mouldwright.geometry.crown;

import java.util.List;

/** How a bay is divided so that a board serves.
 *
 *  @param bays     number of equal sub-bays; 1 if the bay will do as it is
 *  @param stations x of the stations to insert, metres aft, one fewer than the bays
 *  @param worst    largest crown left in a sub-bay, without sign, metres
 *  @param enough   whether that is within the limit; false if even the greatest division tried was not */
public record Subdivision(int bays, List<Double> stations, double worst, boolean enough) {
    /** Keeps its own copy. */
    public Subdivision { stations = List.copyOf(stations); }
}
