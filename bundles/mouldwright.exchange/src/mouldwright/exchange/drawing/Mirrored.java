package mouldwright.exchange.drawing;

/** A curve seen in the centreline. */
record Mirrored(Curve of) implements Curve {

    @Override
    public Point at(double t) {
        Point place = of.at(t);
        return new Point(0.0 - place.x(), place.y());
    }

    @Override
    public Point direction(boolean atEnd) {
        Point along = of.direction(atEnd);
        return new Point(0.0 - along.x(), along.y());
    }

    @Override
    public int pieces() {
        return of.pieces();
    }
}
