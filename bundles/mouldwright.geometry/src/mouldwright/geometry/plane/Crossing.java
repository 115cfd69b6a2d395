package mouldwright.geometry.plane;

/** A place where two edges of rings cross, both of them inside their ends.
 *
 *  @param first  the edge from corner {@code first} to the next
 *  @param second the other edge, its number higher
 *  @param onFirst  share of the first edge before the crossing
 *  @param onSecond share of the second edge before the crossing
 *  @param y metres @param z metres */
record Crossing(int first, int second, double onFirst, double onSecond, double y, double z) { }
