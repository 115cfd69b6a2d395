package mouldwright.geometry.nest;

/** How far a search has come.
 *  @param tried      layouts so far
 *  @param of         layouts to be tried
 *  @param sheets     the best of them takes
 *  @param usedLength of its last sheet, metres */
public record NestProgress(int tried, int of, int sheets, double usedLength) { }
