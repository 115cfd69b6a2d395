package mouldwright.exchange.drawing;

/** A part of a curve.
 *  @param from where it begins on the curve, 0 to 1
 *  @param to   where it ends, not before */
record Part(Curve of, double from, double to) implements Curve {

    /** Step inward over which a direction is taken where it is not an end of the curve. */
    private static final double STEP = 1e-6;

    @Override
    public Point at(double t) {
        return of.at(t == 1 ? to : from + t * (to - from));
    }

    @Override
    public Point direction(boolean atEnd) {
        if (atEnd ? to == 1 : from == 0)
            return of.direction(atEnd);
        return atEnd ? at(1).minus(at(1 - STEP)) : at(STEP).minus(at(0));
    }

    @Override
    public int pieces() {
        return of.pieces();
    }
}
