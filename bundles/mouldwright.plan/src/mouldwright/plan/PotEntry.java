package mouldwright.plan;

/** The pots one ply is wetted from. Likely values.
 *  @param ply             counted from 1 in the order of laying
 *  @param mat             what is laid
 *  @param resin           kg for the ply
 *  @param pots            how many
 *  @param first           resin of the first, kg
 *  @param each            resin of each further one at most, kg
 *  @param catalyst        for a pot of {@code each}, kg
 *  @param catalystVolume  the same by the measure, m3
 *  @param gel             gel time, s
 *  @param working         time to lay in, s */
public record PotEntry(int ply, String mat, double resin, int pots, double first, double each, double catalyst,
        double catalystVolume, double gel, double working) { }
