package mouldwright.exchange.drawing;

/** An arc of an ellipse, by its eccentric angle.
 *  @param centre of the ellipse
 *  @param axis   half of one of its axes, as a way from the centre
 *  @param other  half of the axis across it
 *  @param angle  at which it begins, radians from the first axis to the other
 *  @param sweep  how far it goes round, radians */
record Oval(Point centre, Point axis, Point other, double angle, double sweep) implements Curve {

    private static final double EACH = Math.PI / 8;

    @Override
    public Point at(double t) {
        double c = Math.cos(angle + t * sweep), s = Math.sin(angle + t * sweep);
        return new Point(centre.x() + c * axis.x() + s * other.x(), centre.y() + c * axis.y() + s * other.y());
    }

    @Override
    public Point direction(boolean atEnd) {
        double here = angle + (atEnd ? sweep : 0), sign = Math.signum(sweep), c = sign * Math.cos(here), s = sign * Math.sin(here);
        return new Point(c * other.x() - s * axis.x(), c * other.y() - s * axis.y());
    }

    @Override
    public int pieces() {
        return Math.max(2, (int) Math.ceil(Math.abs(sweep) / EACH));
    }
}
