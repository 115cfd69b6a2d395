package mouldwright.geometry.offset;

import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePlace;
import mouldwright.geometry.plane.Region;

/** The line the foam is carved to: the body less its build-up. Convex corners mitre, re-entrant ones are joined by an arc, bare
 *  stretches and closures stay where they are. */
public final class FoamLine {
    /** How far straight pieces leave the outline, metres: what a saw cannot show. */
    public static final double CHORD = 2e-5;

    private FoamLine() { }

    /** The section of the foam at an x.
     *  @param loft    the body, scaled for shrink already
     *  @param x       metres aft
     *  @param side    from which side creases and ends of layers are seen
     *  @param buildUp what is taken off */
    public static Region at(Loft loft, double x, Side side, BuildUp buildUp) {
        return FoamSection.of(loft, x, side, buildUp, CHORD).foam().region();
    }

    /** The same, moved outward by a further amount in the section plane where the body is not bare, corners mitred.
     *  @param growth metres in the section plane, not negative */
    public static Region grown(Loft loft, double x, Side side, BuildUp buildUp, double growth) {
        return FoamSection.of(loft, x, side, buildUp, CHORD).grown(growth).region();
    }

    /** The same, moved inward all round, bare stretches and closures too.
     *  @param depth metres in the section plane, not negative */
    public static Region within(Loft loft, double x, Side side, BuildUp buildUp, double depth) {
        return FoamSection.of(loft, x, side, buildUp, CHORD).within(depth).region();
    }

    /** Build-up at a place of a section, metres along the normal. */
    public static double thickness(Slice slice, SurfacePlace place, BuildUp buildUp) {
        LayerMap layers = new LayerMap(slice, buildUp, place.port());
        boolean bare = layers.isBare(place.share()) || slice.isBare(place.stretch());
        return bare ? 0 : layers.thickness(place.share());
    }
}
