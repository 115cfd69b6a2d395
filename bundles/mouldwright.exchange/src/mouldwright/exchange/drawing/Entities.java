package mouldwright.exchange.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

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
            case "ELLIPSE" -> List.of(oval(entity));
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

    /** Centre and axes are places of the drawing, whichever way it is seen from; that way decides where the other axis points. */
    private static Curve oval(Entity entity) {
        double ratio = entity.needed(40, "ratio of axes"), facing = facing(entity), x = entity.needed(11, "axis"), y = entity.needed(21, "axis");
        if (Math.abs(entity.figure(31, 0)) > FLAT)
            throw new Entity.BadFigure(entity.line(), "it leaves the plane of the drawing");
        if (!(ratio > 0 && Math.hypot(x, y) > 0))
            throw new Entity.BadFigure(entity.line(), "an axis of it has no length");
        double from = entity.figure(41, 0), sweep = (entity.figure(42, 2 * Math.PI) - from) % (2 * Math.PI);
        return new Oval(new Point(entity.needed(10, "centre"), entity.needed(20, "centre")), new Point(x, y), new Point(-facing * ratio * y, facing * ratio * x), from,
                sweep <= 1e-9 ? sweep + 2 * Math.PI : sweep);
    }

    private static Curve fitted(Entity entity) {
        double[] x = entity.figures(11), y = entity.figures(21), z = entity.figures(31);
        boolean closed = (entity.whole(70, 0) & 1) != 0;
        for (double height : z)
            if (Math.abs(height - z[0]) > FLAT)
                throw new Entity.BadFigure(entity.line(), "it leaves the plane of the drawing");
        List<Point> drawn = new ArrayList<>();
        for (int i = 0; i < Math.min(x.length, y.length); i++)
            drawn.add(new Point(x[i], y[i]));
        List<Point> points = FitSpline.through(drawn, closed).orElseThrow(() -> new Entity.BadFigure(entity.line(), "it has too few points apart from one another"));
        return new FitSpline(points, closed, tangent(entity, 12, 22), tangent(entity, 13, 23));
    }

    private static Optional<Point> tangent(Entity entity, int right, int up) {
        Point direction = new Point(entity.figure(right, 0), entity.figure(up, 0));
        return Math.hypot(direction.x(), direction.y()) > FLAT ? Optional.of(direction) : Optional.empty();
    }

    private static Curve spline(Entity entity) {
        double[] x = entity.figures(10), y = entity.figures(20), z = entity.figures(30), knots = entity.figures(40);
        double[] weights = entity.figures(41);
        int degree = entity.whole(71, 3);
        if (x.length == 0 && entity.figures(11).length > 0)
            return fitted(entity);
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
