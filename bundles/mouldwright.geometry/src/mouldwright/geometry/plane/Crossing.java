package mouldwright.geometry.plane;

/** A place where two edges of rings cross, neither at its ends.
 *
 *  @param first  the edge from corner {@code first} to the next
 *  @param second the other edge, its number higher
 *  @param onFirst  share of the first edge before the crossing
 *  @param onSecond share of the second edge before the crossing
 *  @param enters whether the first edge comes to the left of the second, where the inside of a counter-clockwise ring is
 *  @param y metres @param z metres */
record Crossing(int first, int second, double onFirst, double onSecond, boolean enters, double y, double z) { }
