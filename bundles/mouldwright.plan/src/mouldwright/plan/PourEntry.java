package mouldwright.plan;

/** One pour: a lift of a bay. Likely values.
 *  @param bay      such as {@code S1-S2}
 *  @param lift     from the lowest, counted from 1
 *  @param volume   risen, m3
 *  @param liquid   m3
 *  @param mass     kg
 *  @param a        kg of part A
 *  @param b        kg of part B
 *  @param pots     how many pots it is mixed in */
public record PourEntry(String bay, int lift, double volume, double liquid, double mass, double a, double b, int pots) { }
