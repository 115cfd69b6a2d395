package mouldwright.geometry.nest;

/** What of a size of sheet can be used, in units of {@link Silhouette}.
 *  @param length inside the margin, half a kerf past it on both sides
 *  @param width  the same across
 *  @param cost   of one */
record SheetSize(int length, int width, double cost) { }
