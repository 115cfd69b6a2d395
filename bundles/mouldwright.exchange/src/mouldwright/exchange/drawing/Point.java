package mouldwright.exchange.drawing;

/** A place in a drawing, in the drawing's units. */
public record Point(double x, double y) {

    /** Distance to another place. */
    public double distance(Point other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    /** The way from another place to this one. */
    public Point minus(Point other) {
        return new Point(x - other.x, y - other.y);
    }

    /** Angle by which one turns from this direction to another, radians, 0 to pi. */
    public double turn(Point to) {
        return Math.abs(Math.atan2(x * to.y - y * to.x, x * to.x + y * to.y));
    }
}
