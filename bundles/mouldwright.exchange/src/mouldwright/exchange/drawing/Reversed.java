package mouldwright.exchange.drawing;

/** A curve from its end. */
record Reversed(Curve of) implements Curve {

    @Override
    public Point at(double t) {
        return of.at(1 - t);
    }

    @Override
    public Point direction(boolean atEnd) {
        Point along = of.direction(!atEnd);
        return new Point(-along.x(), -along.y());
    }

    @Override
    public int pieces() {
        return of.pieces();
    }

    @Override
    public Curve reversed() {
        return of;
    }
}
