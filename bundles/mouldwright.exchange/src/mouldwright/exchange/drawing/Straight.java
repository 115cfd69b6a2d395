package mouldwright.exchange.drawing;

/** A straight line. */
record Straight(Point from, Point to) implements Curve {

    @Override
    public Point at(double t) {
        return t == 0 ? from : t == 1 ? to : new Point(from.x() + t * (to.x() - from.x()), from.y() + t * (to.y() - from.y()));
    }

    @Override
    public Point direction(boolean atEnd) {
        return to.minus(from);
    }

    @Override
    public int pieces() {
        return 1;
    }

    @Override
    public Curve reversed() {
        return new Straight(to, from);
    }
}
