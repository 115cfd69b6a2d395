package mouldwright.plan.stage;

import java.util.List;

/** Where the parts of a plug have their weight, on the plug, m.
 *  @param plates   plate by plate
 *  @param foam     bay by bay, without what is carved off again
 *  @param skin     centre of the moulded surface */
record MassMeasures(List<Centre> plates, List<Foam> foam, Place skin) {

    /** A centre of mass.
     *  @param x aft of the datum, m
     *  @param z above the base, m */
    record Place(double x, double z) { }

    /** A plate's.
     *  @param station whose */
    record Centre(String station, Place place) { }

    /** A bay's.
     *  @param net m3 that stay */
    record Foam(Bay bay, double net, double error, Place place) { }

    /** Copies its lists. */
    MassMeasures {
        plates = List.copyOf(plates);
        foam = List.copyOf(foam);
    }
}
