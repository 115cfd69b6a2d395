package mouldwright.exchange.drawing;

import java.util.List;

/** Curves that follow one another.
 *  @param curves in order, each beginning where the one before ends, within the tolerance they were joined with
 *  @param closed whether the last ends where the first begins */
record Chain(List<Curve> curves, boolean closed) {

    Chain {
        curves = List.copyOf(curves);
    }

    Chain reversed() {
        return new Chain(curves.reversed().stream().map(Curve::reversed).toList(), closed);
    }

    Point start() {
        return curves.getFirst().start();
    }

    Point end() {
        return curves.getLast().end();
    }

    /** Twice the area inside, counter-clockwise positive; closely enough to tell which way round it runs. */
    double turns() {
        double twice = 0;
        for (Curve curve : curves) {
            int steps = 8 * curve.pieces();
            for (int i = 0; i < steps; i++) {
                Point a = curve.at((double) i / steps), b = curve.at((i + 1.0) / steps);
                twice += a.x() * b.y() - a.y() * b.x();
            }
        }
        return twice;
    }
}
