package mouldwright.plan;

/** The pots one ply is wetted from. Likely values. What is mixed is stated pot by pot, so that nobody puts the catalyst of a full pot into a small one.
 *  @param laminate {@code skin} or {@code mould}
 *  @param ply      counted from 1 in the order of laying
 *  @param mat      what is laid
 *  @param resin    kg for the ply
 *  @param pots     how many
 *  @param first    the first of them
 *  @param further  each further one, all alike; nothing where there is one only
 *  @param most     the most resin one pot may hold, kg
 *  @param gel      gel time, s
 *  @param working  time to lay in, s */
public record PotEntry(String laminate, int ply, String mat, double resin, int pots, Pot first, Pot further, double most, double gel, double working) {

    /** What goes into one pot.
     *  @param resin           kg
     *  @param catalyst        kg
     *  @param catalystVolume  the same by the measure, m3 */
    public record Pot(double resin, double catalyst, double catalystVolume) { }
}
