package mouldwright.geometry.plane;

import java.util.ArrayList;
import java.util.List;

/** Where straight lines run through a region. */
public final class Crosscut {

    private Crosscut() { }

    /** What of a level line lies inside.
     *  @param from @param to metres */
    public record Span(double from, double to) {
        /** Metres. */
        public double length() { return to - from; }

        /** Halfway, metres. */
        public double middle() { return 0.5 * (from + to); }

        /** Whether another lies within it. */
        public boolean holds(double otherFrom, double otherTo) { return from <= otherFrom && otherTo <= to; }
    }

    /** Where a level line runs through a region, from port to starboard.
     *  @param height of the line, metres */
    public static List<Span> level(Region region, double height) {
        return cut(region, height, false);
    }

    /** Where an upright line runs through a region, going up.
     *  @param breadth of the line off the centreline, metres */
    public static List<Span> upright(Region region, double breadth) {
        return cut(region, breadth, true);
    }

    private static List<Span> cut(Region region, double at, boolean upright) {
        List<Double> cuts = new ArrayList<>();
        for (Piece piece : region.parts()) {
            cut(piece.outer(), at, upright, cuts);
            piece.holes().forEach(hole -> cut(hole, at, upright, cuts));
        }
        cuts.sort(null);
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i + 1 < cuts.size(); i += 2)
            spans.add(new Span(cuts.get(i), cuts.get(i + 1)));
        return spans;
    }

    /** A corner on the line counts with what lies below it, so that cuts come in pairs. */
    private static void cut(Outline ring, double at, boolean upright, List<Double> cuts) {
        double[] a = upright ? ring.ys() : ring.zs(), b = upright ? ring.zs() : ring.ys();
        for (int i = 0; i < a.length; i++) {
            int j = i + 1 == a.length ? 0 : i + 1;
            if (a[i] <= at != a[j] <= at)
                cuts.add(b[i] + (b[j] - b[i]) * (at - a[i]) / (a[j] - a[i]));
        }
    }
}
