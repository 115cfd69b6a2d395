package mouldwright.geometry.offset;

import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePlace;
import mouldwright.geometry.plane.Region;

/** The line the foam is carved to: the body less its build-up. */
public final class FoamLine {
    /** The section of the foam at an x.
     *  @param loft    the body, scaled for shrink already
     *  @param x       metres aft
     *  @param side    from which side creases and ends of layers are seen
     *  @param buildUp what is taken off */
    public static Region at(Loft loft, double x, Side side, BuildUp buildUp) { throw new UnsupportedOperationException("being written"); }
    /** The same, moved outward by a further amount in the section plane where the body is not bare, corners mitred.
     *  @param growth metres in the section plane, not negative */
    public static Region grown(Loft loft, double x, Side side, BuildUp buildUp, double growth) { throw new UnsupportedOperationException("being written"); }
    /** The same, moved inward all round, bare stretches and closures too.
     *  @param depth metres in the section plane, not negative */
    public static Region within(Loft loft, double x, Side side, BuildUp buildUp, double depth) { throw new UnsupportedOperationException("being written"); }
    /** Build-up at a place of a section, metres along the normal. */
    public static double thickness(Slice slice, SurfacePlace place, BuildUp buildUp) { throw new UnsupportedOperationException("being written"); }
}
