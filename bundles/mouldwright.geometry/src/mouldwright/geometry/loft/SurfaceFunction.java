package mouldwright.geometry.loft;


/** A figure that differs over the surface, such as a thickness. */
@FunctionalInterface
public interface SurfaceFunction {
    /** Its value at a place. */
    double at(SurfacePlace place, SurfacePoint point);
}
