package mouldwright.geometry.section;

import mouldwright.geometry.curve.ArcPath;

/** A smooth part of an outline between two marks, by the share u of its own arc length, 0 to 1. */
public final class Stretch {
    private final ArcPath path;
    private final Mark from;
    private final Mark to;
    private final boolean bare;

    Stretch(ArcPath path, Mark from, Mark to, boolean bare) {
        this.path = path;
        this.from = from;
        this.to = to;
        this.bare = bare;
    }

    /** What borders it at u = 0. */
    public Mark from() { return from; }

    /** What borders it at u = 1. */
    public Mark to() { return to; }

    /** Whether it is marked as bare. */
    public boolean bare() { return bare; }

    /** Arc length, metres; 0 for a point. */
    public double length() { return path.length(); }

    /** The place at a share of its length, with exact derivatives. @param u 0 to 1 */
    public CurvePoint at(double u) {
        double[] out = new double[6];
        at(u, out);
        return new CurvePoint(out[0], out[1], out[2], out[3], out[4], out[5]);
    }

    /** The same without making an object.
     *  @param out filled with y, z, dy/du, dz/du and the second derivatives, metres */
    public void at(double u, double[] out) {
        double length = path.length();
        path.at(u * length, out);
        out[2] *= length;
        out[3] *= length;
        out[4] *= length * length;
        out[5] *= length * length;
    }

    ArcPath path() { return path; }
}
