package mouldwright.exchange.drawing;

import java.util.ArrayList;
import java.util.List;

/** A polyline in the older manner, its points entities of their own. */
final class OldPolyline {

    private static final int CLOSED = 1;
    private static final int THREE_DIMENSIONAL = 8 | 16 | 64;
    private static final int FRAME_POINT = 16;

    private OldPolyline() { }

    /** Its edges.
     *  @throws Entity.BadFigure if it is none in a plane */
    static List<Curve> curves(Entity entity, List<Entity> vertices) {
        int flags = entity.whole(70, 0);
        if ((flags & THREE_DIMENSIONAL) != 0)
            throw new Entity.BadFigure(entity.line(), "it is a polyline in space, or a mesh");
        if (Math.abs(entity.figure(210, 0)) > 1e-6 || Math.abs(entity.figure(220, 0)) > 1e-6)
            throw new Entity.BadFigure(entity.line(), "it leaves the plane of the drawing");
        double facing = entity.figure(230, 1) < 0 ? -1 : 1;
        List<Point> points = new ArrayList<>();
        List<Double> bulges = new ArrayList<>();
        for (Entity vertex : vertices)
            if ((vertex.whole(70, 0) & FRAME_POINT) == 0) {
                points.add(new Point(facing * vertex.needed(10, "point"), vertex.needed(20, "point")));
                bulges.add(facing * vertex.figure(42, 0));
            }
        return Entities.edges(entity, points, bulges, (flags & CLOSED) != 0);
    }
}
