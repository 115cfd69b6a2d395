package mouldwright.exchange.drawing;

/** An arc of a circle.
 *  @param centre of the circle
 *  @param radius positive
 *  @param angle  at which it begins, radians
 *  @param sweep  how far it goes round, counter-clockwise positive, radians
 *  @param from   where it begins, as drawn
 *  @param to     where it ends, as drawn */
record Bow(Point centre, double radius, double angle, double sweep, Point from, Point to) implements Curve {

    static Bow of(Point centre, double radius, double angle, double sweep) {
        return new Bow(centre, radius, angle, sweep, on(centre, radius, angle), on(centre, radius, angle + sweep));
    }

    /** The arc of a bulged edge: the bulge is the tangent of a quarter of the angle it goes round. */
    static Curve bulged(Point from, Point to, double bulge) {
        double chord = from.distance(to);
        if (bulge == 0 || chord == 0)
            return new Straight(from, to);
        double sweep = 4 * Math.atan(bulge), radius = chord * (1 + bulge * bulge) / (4 * Math.abs(bulge));
        double off = (1 - bulge * bulge) / (4 * bulge);
        Point centre = new Point((from.x() + to.x()) / 2 - off * (to.y() - from.y()), (from.y() + to.y()) / 2 + off * (to.x() - from.x()));
        return new Bow(centre, radius, Math.atan2(from.y() - centre.y(), from.x() - centre.x()), sweep, from, to);
    }

    private static Point on(Point centre, double radius, double angle) {
        return new Point(centre.x() + radius * Math.cos(angle), centre.y() + radius * Math.sin(angle));
    }

    @Override
    public Point at(double t) {
        return t == 0 ? from : t == 1 ? to : on(centre, radius, angle + t * sweep);
    }

    @Override
    public Point direction(boolean atEnd) {
        double here = angle + (atEnd ? sweep : 0), sign = Math.signum(sweep);
        return new Point(-sign * Math.sin(here), sign * Math.cos(here));
    }

    @Override
    public int pieces() {
        return Math.max(1, (int) Math.ceil(Math.abs(sweep) / (Math.PI / 4)));
    }
}
