package mouldwright.exchange.mesh;

import mouldwright.geometry.offset.BuildUp;

/** What is taken off a lofted body before it is meshed, and how finely.
 *  @param tolerance how far triangles may leave the surface, metres, positive
 *  @param buildUp   taken off along the normal; a step in it is drawn over one triangle
 *  @param forward   taken off the forward end face, metres
 *  @param aft       taken off the after end face, metres */
public record MeshOrder(double tolerance, BuildUp buildUp, double forward, double aft) {

    /** The surface as lofted. */
    public static MeshOrder plain(double tolerance) {
        return new MeshOrder(tolerance, BuildUp.NONE, 0, 0);
    }
}
