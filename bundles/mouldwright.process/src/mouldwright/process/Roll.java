package mouldwright.process;

/** Mat off the roll. */
public final class Roll {

    private Roll() { }

    /**
     * Pieces side by side over a girth, each lapping the next: n = ceil((G - l)/(W - l)). Source: closed form, n widths
     * less n - 1 laps cover the girth.
     *
     * @param girth to cover, m
     * @param width of the roll, m, above the lap
     * @param lap   m
     * @return at least 1
     */
    public static int piecesAcross(double girth, double width, double lap) {
        Require.notNegative(lap, "lap");
        if (!(width > lap)) {
            throw new IllegalArgumentException("a roll " + width + " m wide cannot lap by " + lap + " m");
        }
        return Whole.count(Math.max(0, Require.positive(girth, "girth") - lap), width - lap, "pieces");
    }

    /** Width of each piece where {@code pieces} of equal width, lapped, cover the girth exactly, m. */
    public static double pieceWidth(double girth, int pieces, double lap) {
        Require.positive(pieces, "pieces");
        return (Require.positive(girth, "girth") + (pieces - 1) * Require.notNegative(lap, "lap")) / pieces;
    }
}
