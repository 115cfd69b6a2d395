package mouldwright.exchange.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Makes curves of entities. */
final class Entities {

    /** Lying in the plane of the drawing, seen from below or from above; in the drawing's units, or as a share. */
    private static final double FLAT = 1e-6;

    private Entities() { }

    /** The curves of an entity.
     *  @throws Entity.BadFigure if it cannot be one */
    static List<Curve> curves(Entity entity) {
        return switch (entity.kind()) {
            case "LINE" -> line(entity);
            case "ARC" -> List.of(arc(entity, Math.toRadians(entity.needed(50, "first angle")), Math.toRadians(entity.needed(51, "second angle"))));
            case "CIRCLE" -> List.of(arc(entity, 0, 2 * Math.PI));
            case "LWPOLYLINE" -> polyline(entity);
            case "SPLINE" -> List.of(spline(entity));
            default -> throw new Entity.BadFigure(entity.line(), "it is not read");
        };
    }

    private static List<Curve> line(Entity entity) {
        if (Math.abs(entity.figure(30, 0) - entity.figure(31, 0)) > FLAT)
            throw new Entity.BadFigure(entity.line(), "it leaves the plane of the drawing");
        return List.of(new Straight(new Point(entity.needed(10, "start"), entity.needed(20, "start")), new Point(entity.needed(11, "end"), entity.needed(21, "end"))));
    }

    /** Entities with a direction of their own may be drawn from behind, x reversed. */
    private static double facing(Entity entity) {
        if (Math.abs(entity.figure(210, 0)) > FLAT || Math.abs(entity.figure(220, 0)) > FLAT)
            throw new Entity.BadFigure(entity.line(), "it leaves the plane of the drawing");
        return entity.figure(230, 1) < 0 ? -1 : 1;
    }

    private static Curve arc(Entity entity, double from, double to) {
        double radius = entity.needed(40, "radius"), facing = facing(entity);
        if (!(radius > 0))
            throw new Entity.BadFigure(entity.line(), "its radius is " + radius);
        double sweep = (to - from) % (2 * Math.PI);
        sweep = sweep <= 0 ? sweep + 2 * Math.PI : sweep;
        Point centre = new Point(facing * entity.needed(10, "centre"), entity.needed(20, "centre"));
        return facing > 0 ? Bow.of(centre, radius, from, sweep) : Bow.of(centre, radius, Math.PI - from, -sweep);
    }

    private static List<Curve> polyline(Entity entity) {
        List<Point> points = new ArrayList<>();
        List<Double> bulges = new ArrayList<>();
        double facing = facing(entity), x = 0;
        for (Entity.Group group : entity.groups())
            switch (group.code()) {
                case 10 -> x = Entity.figure(group);
                case 20 -> {
                    points.add(new Point(facing * x, Entity.figure(group)));
                    bulges.add(0.0);
                }
                case 42 -> {
                    if (!bulges.isEmpty())
                        bulges.set(bulges.size() - 1, facing * Entity.figure(group));
                }
                default -> { }
            }
        return edges(entity, points, bulges, (entity.whole(70, 0) & 1) != 0);
    }

    /** The edges from point to point, those without length left out.
     *  @param closed whether the last point is joined to the first */
    static List<Curve> edges(Entity entity, List<Point> points, List<Double> bulges, boolean closed) {
        if (points.size() < 2)
            throw new Entity.BadFigure(entity.line(), "it has " + points.size() + " points");
        List<Curve> edges = new ArrayList<>();
        for (int i = 0; i + (closed ? 0 : 1) < points.size(); i++) {
            Point from = points.get(i), to = points.get((i + 1) % points.size());
            if (from.distance(to) > 0)
                edges.add(Bow.bulged(from, to, bulges.get(i)));
        }
        return edges;
    }

    private static Curve spline(Entity entity) {
        double[] x = entity.figures(10), y = entity.figures(20), z = entity.figures(30), knots = entity.figures(40);
        double[] weights = entity.figures(41);
        int degree = entity.whole(71, 3);
        if (x.length == 0 && entity.figures(11).length > 0)
            throw new Entity.BadFigure(entity.line(), "it has fit points only");
        if (weights.length == 0) {
            weights = new double[x.length];
            Arrays.fill(weights, 1);
        }
        String refusal = x.length != y.length || weights.length != x.length ? "its control points and weights are not of one number"
                : Spline.refusal(degree, knots, x.length, weights);
        if (!refusal.isEmpty())
            throw new Entity.BadFigure(entity.line(), refusal);
        for (double height : z)
            if (Math.abs(height - z[0]) > FLAT)
                throw new Entity.BadFigure(entity.line(), "it leaves the plane of the drawing");
        return new Spline(degree, knots, x, y, weights);
    }
}
