package mouldwright.geometry.loft;

import java.util.List;
import mouldwright.geometry.section.Mark;
import mouldwright.geometry.section.SectionKind;

/** A body lofted through stations: through equal shares of matching stretches a cubic spline runs along the body. */
public final class Loft {
    /** Lofts a body.
     *  @param stations those that shape the body, x increasing
     *  @return the body, or why there is none; never an exception, whatever the figures */
    public static LoftResult through(List<LoftStation> stations) { throw new UnsupportedOperationException("being written"); }
    /** Half or full. */
    public SectionKind kind() { throw new UnsupportedOperationException("being written"); }
    /** Forward end, metres aft of the datum. */
    public double startX() { throw new UnsupportedOperationException("being written"); }
    /** After end, metres aft of the datum. */
    public double endX() { throw new UnsupportedOperationException("being written"); }
    /** Where the shaping stations stand, metres aft of the datum, increasing. */
    public List<Double> stations() { throw new UnsupportedOperationException("being written"); }
    /** How many stretches the outline has at every x. */
    public int stretches() { throw new UnsupportedOperationException("being written"); }
    /** What borders the stretches: mark i lies before stretch i, the last one after the last stretch. */
    public List<Mark> marks() { throw new UnsupportedOperationException("being written"); }
    /** Whether a stretch is bare at an x because its sections mark it so. */
    public boolean isBare(int stretch, double x) { throw new UnsupportedOperationException("being written"); }
    /** The section of the body at an x, seen from its after side where the body is creased there.
     *  @param x metres aft; a place past an end is taken at the end */
    public Slice at(double x) { throw new UnsupportedOperationException("being written"); }
    /** The same, with the side from which a crease is seen. */
    public Slice at(double x, Side side) { throw new UnsupportedOperationException("being written"); }
    /** The body times a factor about x = y = z = 0. @param factor positive */
    public Loft scaled(double factor) { throw new UnsupportedOperationException("being written"); }
}
