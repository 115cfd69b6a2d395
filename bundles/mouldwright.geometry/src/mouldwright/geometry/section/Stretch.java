package mouldwright.geometry.section;

/** A smooth part of an outline between two marks, by the share u of its own arc length, 0 to 1. */
public final class Stretch {
    /** What borders it at u = 0. */
    public Mark from() { throw new UnsupportedOperationException("being written"); }
    /** What borders it at u = 1. */
    public Mark to() { throw new UnsupportedOperationException("being written"); }
    /** Whether it is marked as bare. */
    public boolean bare() { throw new UnsupportedOperationException("being written"); }
    /** Arc length, metres; 0 for a point. */
    public double length() { throw new UnsupportedOperationException("being written"); }
    /** The place at a share of its length, with exact derivatives. @param u 0 to 1 */
    public CurvePoint at(double u) { throw new UnsupportedOperationException("being written"); }
}
