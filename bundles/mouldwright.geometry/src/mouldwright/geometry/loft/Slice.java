package mouldwright.geometry.loft;

import java.util.Optional;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;

/** The section of a lofted body at one x. Figures of whole outlines count both sides and closures. */
public final class Slice {
    /** Metres aft of the datum. */
    public double x() { throw new UnsupportedOperationException("being written"); }
    /** From which side a crease is seen. */
    public Side side() { throw new UnsupportedOperationException("being written"); }
    /** The body this is a section of. */
    public Loft loft() { throw new UnsupportedOperationException("being written"); }
    /** A point of the surface. @param stretch from 0 @param u share of the stretch, 0 to 1 */
    public SurfacePoint point(int stretch, double u) { throw new UnsupportedOperationException("being written"); }
    /** A place with its share of the girth. @param stretch from 0 @param u share of the stretch, 0 to 1 */
    public SurfacePlace place(int stretch, double u) { throw new UnsupportedOperationException("being written"); }
    /** The place at a share of the half girth. A place on a closure is taken at the end of the nearest stretch.
     *  @param share 0 at bottom centre to 1 at top centre
     *  @param port  on the port side; no matter for a half body */
    public SurfacePlace placeAtShare(double share, boolean port) { throw new UnsupportedOperationException("being written"); }
    /** Share of the half girth at which a place of the girth lies, 0 to 1; empty if no such line is known.
     *  @param place which
     *  @param port  on the port side; no matter for a half body */
    public Optional<Double> share(GirthPlace place, boolean port) { throw new UnsupportedOperationException("being written"); }
    /** Length of the whole outline, metres. */
    public double girth() { throw new UnsupportedOperationException("being written"); }
    /** Area, square metres. */
    public double area() { throw new UnsupportedOperationException("being written"); }
    /** Centroid of the area. */
    public PlanePoint centroid() { throw new UnsupportedOperationException("being written"); }
    /** Length of the closure at bottom centre, one side, metres. */
    public double bottomClosure() { throw new UnsupportedOperationException("being written"); }
    /** Length of the closure at top centre, one side, metres. */
    public double topClosure() { throw new UnsupportedOperationException("being written"); }
    /** Whether there is no area: at a pointed or knife-edged end. */
    public boolean isDegenerate() { throw new UnsupportedOperationException("being written"); }
    /** Whether a place of the surface is bare. */
    public boolean isBare(SurfacePlace place, Bare bare) { throw new UnsupportedOperationException("being written"); }
    /** The whole outline as straight pieces, counter-clockwise seen from aft.
     *  @param tolerance how far the curve may leave its chords, metres, positive */
    public Outline outline(double tolerance) { throw new UnsupportedOperationException("being written"); }
}
