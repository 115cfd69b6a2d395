package mouldwright.exchange.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.curve.CubicSpline;
import mouldwright.geometry.curve.EndCondition;

/** A cubic spline through the points it was drawn by, over the length of the chords between them. It ends straight where the drawing gives no
 *  direction. The format leaves open how such points are joined; with directions this is how it is commonly done, without them
 *  programs differ by what they guess. */
final class FitSpline implements Curve {

    private final CubicSpline spline;
    private final Optional<Point> start;
    private final Optional<Point> end;
    private final double length;
    /** The share of the spline that holds to given directions: a quadratic or line whose end slopes are these. */
    private final Point along;
    private final Point bend;

    /** @param points two at least, no two neighbours alike; of a closed one the last is the first, and there are four at least
     *  @param start  direction at the first, of any length @param end direction at the last */
    FitSpline(List<Point> points, boolean closed, Optional<Point> start, Optional<Point> end) {
        double[] knots = new double[points.size()];
        for (int i = 1; i < knots.length; i++)
            knots[i] = knots[i - 1] + points.get(i - 1).distance(points.get(i));
        this.length = knots[knots.length - 1];
        this.start = closed ? Optional.empty() : start.map(FitSpline::unit);
        this.end = closed ? Optional.empty() : end.map(FitSpline::unit);
        this.along = this.start.or(() -> this.end).orElse(new Point(0, 0));
        this.bend = this.start.isPresent() && this.end.isPresent() ? scaled(this.end.get().minus(this.start.get()), 1 / (2 * length)) : new Point(0, 0);
        double[][] values = new double[knots.length][];
        for (int i = 0; i < knots.length; i++) {
            Point held = held(knots[i]);
            values[i] = new double[] { points.get(i).x() - held.x(), points.get(i).y() - held.y() };
        }
        this.spline = closed ? CubicSpline.periodic(knots, values) : CubicSpline.through(knots, values, condition(this.start), condition(this.end));
    }

    /** The points a spline can go through: neighbours apart, and closed where it is to be. @return empty where they are too few */
    static Optional<List<Point>> through(List<Point> drawn, boolean closed) {
        List<Point> points = new ArrayList<>();
        for (Point point : drawn)
            if (points.isEmpty() || points.getLast().distance(point) > 0)
                points.add(point);
        if (closed && points.size() > 1 && points.getLast().distance(points.getFirst()) > 0)
            points.add(points.getFirst());
        return points.size() < (closed ? 4 : 2) ? Optional.empty() : Optional.of(points);
    }

    private static EndCondition condition(Optional<Point> given) {
        return given.isPresent() ? EndCondition.LEVEL : EndCondition.STRAIGHT;
    }

    private static Point unit(Point direction) {
        return scaled(direction, 1 / Math.hypot(direction.x(), direction.y()));
    }

    private static Point scaled(Point point, double factor) {
        return new Point(point.x() * factor, point.y() * factor);
    }

    /** Taken off the points before, added to the spline after: the spline itself is level where a direction is given. */
    private Point held(double t) {
        return new Point(along.x() * t + bend.x() * t * t, along.y() * t + bend.y() * t * t);
    }

    @Override
    public Point at(double t) {
        double at = t * length;
        Point held = held(at);
        return new Point(spline.value(at, 0) + held.x(), spline.value(at, 1) + held.y());
    }

    @Override
    public Point direction(boolean atEnd) {
        double at = atEnd ? length : 0;
        return new Point(spline.first(at, 0) + along.x() + 2 * bend.x() * at, spline.first(at, 1) + along.y() + 2 * bend.y() * at);
    }

    @Override
    public int pieces() {
        return Math.max(4, 2 * spline.size());
    }
}
