package mouldwright.geometry.measure;

import java.util.function.BooleanSupplier;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.SurfaceFunction;

/** Measures of a lofted body by Gauss quadrature over its patches. A region past an end of the body is cut off there.
 *  Long work ends with a CancellationException once it is cancelled. */
public final class Measures {
    /** Measures a body.
     *  @param loft      the body
     *  @param bare      what of it is bare
     *  @param cancelled asked per patch */
    public static Measures of(Loft loft, Bare bare, BooleanSupplier cancelled) { throw new UnsupportedOperationException("being written"); }
    /** Volume of the whole body with its centroid. */
    public VolumeCentre volume() { throw new UnsupportedOperationException("being written"); }
    /** Volume between two planes across the body, metres aft. */
    public VolumeCentre volume(double fromX, double toX) { throw new UnsupportedOperationException("being written"); }
    /** Lofted surface of the whole body, without end faces. */
    public AreaSplit area() { throw new UnsupportedOperationException("being written"); }
    /** Lofted surface between two planes across the body, metres aft. */
    public AreaSplit area(double fromX, double toX) { throw new UnsupportedOperationException("being written"); }
    /** Lofted surface of a region, both sides; closures inside the band counted. */
    public AreaSplit area(SurfaceRegion region) { throw new UnsupportedOperationException("being written"); }
    /** Integral of a figure over the moulded surface of a region, both sides (a half body is evaluated to starboard). */
    public Measured integral(SurfaceRegion region, SurfaceFunction figure) { throw new UnsupportedOperationException("being written"); }
}
