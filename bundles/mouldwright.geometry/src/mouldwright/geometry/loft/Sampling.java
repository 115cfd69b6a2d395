package mouldwright.geometry.loft;

import mouldwright.geometry.section.Section;
import mouldwright.geometry.section.SectionShape;
import mouldwright.geometry.section.Stretch;

/** Turns a section into a row of the loft: y, z, dy/du, dz/du at every column of every stretch. */
final class Sampling {
    /** Figures per column. */
    static final int FIGURES = 4;

    private Sampling() { }

    static double[] row(Section section, UGrid grid) {
        double[] row = new double[section.stretches().size() * grid.columns() * FIGURES];
        double[] out = new double[6];
        int at = 0;
        for (Stretch stretch : section.stretches())
            for (int c = 0; c < grid.columns(); c++, at += FIGURES) {
                stretch.at(grid.u(c), out);
                System.arraycopy(out, 0, row, at, FIGURES);
            }
        return row;
    }

    /** A point or knife edge that goes with whatever its neighbour has: a point is one point everywhere, a knife edge is
     *  shared out as the neighbour's girth is. */
    static double[] row(Section end, Section neighbour, UGrid grid) {
        if (end.shape() == SectionShape.KNIFE_EDGE && Matching.sameMarks(end, neighbour))
            return row(end, grid);
        double[] row = new double[neighbour.stretches().size() * grid.columns() * FIGURES];
        double[] out = new double[6];
        double before = 0;
        int at = 0;
        for (Stretch stretch : neighbour.stretches()) {
            double share = stretch.length() / neighbour.outlineLength();
            for (int c = 0; c < grid.columns(); c++, at += FIGURES) {
                whole(end, before + share * grid.u(c), out);
                row[at] = out[0];
                row[at + 1] = out[1];
                row[at + 2] = out[2] * share;
                row[at + 3] = out[3] * share;
            }
            before += share;
        }
        return row;
    }

    /** The whole outline of a section by the share of its length. */
    private static void whole(Section section, double share, double[] out) {
        double length = section.outlineLength();
        double s = share * length;
        for (Stretch stretch : section.stretches()) {
            if (s <= stretch.length() || stretch == section.stretches().getLast()) {
                double own = stretch.length();
                stretch.at(own == 0 ? 0 : Math.min(1, s / own), out);
                for (int i = 2; i < 4; i++)
                    out[i] *= own == 0 ? 0 : length / own;
                return;
            }
            s -= stretch.length();
        }
    }
}
