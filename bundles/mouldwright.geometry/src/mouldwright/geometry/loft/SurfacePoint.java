package mouldwright.geometry.loft;

/** A point of the lofted surface with its outward unit normal and its derivatives.
 *
 *  @param x  metres aft
 *  @param y  metres to starboard
 *  @param z  metres above the base
 *  @param nx outward unit normal, aft
 *  @param ny outward unit normal, to starboard
 *  @param nz outward unit normal, up
 *  @param yu dy/du round the outline, metres
 *  @param zu dz/du round the outline, metres
 *  @param yx dy/dx along the body at this u, - ; infinite at a blunt end
 *  @param zx dz/dx along the body at this u, - ; infinite at a blunt end */
public record SurfacePoint(double x, double y, double z, double nx, double ny, double nz,
                           double yu, double zu, double yx, double zx) {
    /** Bevel of a plate's edge here: asin(n_x), radians, positive where the body narrows going aft. */
    public double bevel() {
        return Math.asin(Math.clamp(nx, -1.0, 1.0));
    }
}
