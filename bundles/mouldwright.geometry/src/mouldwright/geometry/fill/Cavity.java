package mouldwright.geometry.fill;

import java.util.List;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.measure.Measured;
import mouldwright.geometry.plane.Region;

/** What is poured into a bay: over its clear length the foam line grown by the overfill, less the pocket inside the shell,
 *  less the backbones. Long work ends with a CancellationException once it is cancelled. */
public final class Cavity {
    /** Measures a cavity.
     *  @param loft      the body, scaled for shrink already
     *  @param order     what is wanted
     *  @param cancelled asked per section */
    public static Cavity of(Loft loft, CavityOrder order, BooleanSupplier cancelled) { throw new UnsupportedOperationException("being written"); }
    /** Volume with overfill, cubic metres. */
    public Measured poured() { throw new UnsupportedOperationException("being written"); }
    /** Volume without overfill, cubic metres. */
    public Measured net() { throw new UnsupportedOperationException("being written"); }
    /** What is carved off: poured less net, cubic metres. */
    public Measured trim() { throw new UnsupportedOperationException("being written"); }
    /** Volume of the pocket to be packed, backbones counted as part of it where they cross it, cubic metres. */
    public Measured pocket() { throw new UnsupportedOperationException("being written"); }
    /** Whether the shell is thicker than the section somewhere, so that no pocket is left there. */
    public boolean pocketCloses() { throw new UnsupportedOperationException("being written"); }
    /** Whether no pocket is left anywhere. */
    public boolean pocketEmpty() { throw new UnsupportedOperationException("being written"); }
    /** From where to where the cavity reaches, overfill counted. */
    public Extent extent(Attitude attitude) { throw new UnsupportedOperationException("being written"); }
    /** Volume between two heights along the upward direction, overfill counted, cubic metres. */
    public Measured between(Attitude attitude, double low, double high) { throw new UnsupportedOperationException("being written"); }
    /** Volumes of lifts of equal height from the lowest up. @param lifts how many, 1 or more */
    public List<Measured> lifts(Attitude attitude, int lifts) { throw new UnsupportedOperationException("being written"); }
    /** The section of the cavity at an x, overfill counted. */
    public Region at(double x) { throw new UnsupportedOperationException("being written"); }
}
