package mouldwright.geometry.loft;

/** Why no body can be lofted through the stations. Stations are counted from 0 in the order given. */
public sealed interface LoftFault {

    /** Fewer than two stations shape the body. @param given how many */
    record TooFewStations(int given) implements LoftFault { }

    /** A station's x is not a number or absurdly far. @param station which */
    record NotFinite(int station) implements LoftFault { }

    /** A station lies forward of the one before it. @param fore @param aft the two as given */
    record OutOfOrder(int fore, int aft) implements LoftFault { }

    /** Two stations at one x. @param fore @param aft the two */
    record Together(int fore, int aft) implements LoftFault { }

    /** A half section against a full one. @param fore @param aft the two */
    record KindsDiffer(int fore, int aft) implements LoftFault { }

    /** A line is on one of two neighbours only. @param fore @param aft the two @param line its name
     *  @param missingAt the station without it */
    record LineMissing(int fore, int aft, String line, int missingAt) implements LoftFault { }

    /** Two neighbours have the same lines in different order. @param fore @param aft the two @param line first that differs */
    record LinesCross(int fore, int aft, String line) implements LoftFault { }

    /** Two neighbours have different numbers of knuckles between the same two lines.
     *  @param fore @param aft the two
     *  @param from  line below, or "" for the start of the outline @param to line above, or "" for its end
     *  @param foreCount @param aftCount knuckles of each */
    record KnucklesDiffer(int fore, int aft, String from, String to, int foreCount, int aftCount) implements LoftFault { }

    /** A point or knife edge that is not at an end of the body. @param station which */
    record PinchedInside(int station) implements LoftFault { }

    /** No section has an area. */
    record NoBody() implements LoftFault { }
}
