package mouldwright.geometry.loft;

import mouldwright.geometry.curve.Kronrod;

/** The shares of a stretch at which a loft keeps its lengthwise splines: cells with their borders and the places of a
 *  Kronrod rule between them. */
final class UGrid {
    /** Columns of a cell: its lower border and the rule's places. */
    static final int PER_CELL = Kronrod.SIZE + 1;

    private final int cells;
    private final double[] u;

    UGrid(int cells) {
        this.cells = cells;
        u = new double[cells * PER_CELL + 1];
        for (int c = 0; c < cells; c++) {
            u[c * PER_CELL] = (double) c / cells;
            for (int k = 0; k < Kronrod.SIZE; k++)
                u[c * PER_CELL + 1 + k] = (c + Kronrod.node(k)) / cells;
        }
        u[cells * PER_CELL] = 1;
    }

    /** Fine for few long stretches, coarser where knuckles cut the outline into many short ones. */
    static UGrid forStretches(int stretches) {
        return new UGrid(Math.clamp(48 / stretches, 2, 12));
    }

    int cells() { return cells; }

    int columns() { return u.length; }

    double u(int column) { return u[column]; }

    /** The column at or below a share, never the last. */
    int below(double share) {
        int column = Math.clamp((int) (share * cells), 0, cells - 1) * PER_CELL;
        while (column + 2 < u.length && u[column + 1] <= share)
            column++;
        return column;
    }
}
