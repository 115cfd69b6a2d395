package mouldwright.geometry.plane;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Cuts small loops off a ring where it crosses itself: those at convex corners of a line moved in, which run clockwise and lie
 *  outside, and those at re-entrant corners of a line moved out, which run counter-clockwise and lie inside. What is left is
 *  what the ring runs round counter-clockwise, and simple. Rings that are more tangled than that are left to others. */
final class LoopCutter {

    /** A simple ring, counter-clockwise, cut out of another; without corners if the other runs round nothing.
     *  @param edges edge k, from corner k to the next, lies on this edge of the other ring */
    record Cut(double[] y, double[] z, int[] edges) {
        private static final Cut NOTHING = new Cut(new double[0], new double[0], new int[0]);

        double signedArea() {
            double twice = 0;
            for (int i = 1; i + 1 < y.length; i++)
                twice += (y[i] - y[0]) * (z[i + 1] - z[0]) - (z[i] - z[0]) * (y[i + 1] - y[0]);
            return twice / 2;
        }
    }

    private record Visit(int crossing, int edge, double along) { }

    /** Loops below this share of the largest are what rounding makes of two corners at one place. */
    private static final double ROUNDING = 1e-12;

    private final double[] y;
    private final double[] z;
    private final boolean filled;

    private LoopCutter(double[] y, double[] z, boolean filled) {
        this.y = y;
        this.z = z;
        this.filled = filled;
    }

    /** Cuts.
     *  @param y @param z corners, no two neighbours at one place
     *  @param filled whether what lies within the outermost line counts, run round or not
     *  @return empty if the ring is too tangled, falls into pieces, has holes that count or touches itself */
    static Optional<Cut> cut(double[] y, double[] z, boolean filled) {
        return EdgeSweep.within(y, z).flatMap(crossings -> new LoopCutter(y, z, filled).cut(crossings));
    }

    private Optional<Cut> cut(List<Crossing> crossings) {
        if (crossings.isEmpty()) {
            int[] edges = new int[y.length];
            Arrays.setAll(edges, i -> i);
            Cut whole = new Cut(y, z, edges);
            return Optional.of(whole.signedArea() > 0 ? whole : Cut.NOTHING);
        }
        return loops(crossings).flatMap(this::outermost);
    }

    /** Loops that do not cross one another; empty if the ring is tangled so that there are none. */
    private Optional<List<Cut>> loops(List<Crossing> crossings) {
        List<Visit> visits = new ArrayList<>();
        for (int c = 0; c < crossings.size(); c++) {
            visits.add(new Visit(c, crossings.get(c).first(), crossings.get(c).onFirst()));
            visits.add(new Visit(c, crossings.get(c).second(), crossings.get(c).onSecond()));
        }
        visits.sort(Comparator.comparingInt(Visit::edge).thenComparingDouble(Visit::along));
        List<Cut> loops = new ArrayList<>();
        Deque<Integer> open = new ArrayDeque<>();
        Deque<Strand> strands = new ArrayDeque<>();
        Strand strand = new Strand();
        int corner = 0;
        for (Visit visit : visits) {
            for (; corner <= visit.edge; corner++)
                strand.add(y[corner], z[corner], corner);
            Crossing at = crossings.get(visit.crossing);
            if (!open.contains(visit.crossing)) {
                open.push(visit.crossing);
                strands.push(strand);
                strand = new Strand();
                strand.add(at.y(), at.z(), visit.edge);
                continue;
            }
            if (open.pop() != visit.crossing)
                return Optional.empty();
            loops.add(strand.closed());
            strand = strands.pop();
            strand.add(at.y(), at.z(), visit.edge);
        }
        for (; corner < y.length; corner++)
            strand.add(y[corner], z[corner], corner);
        loops.add(strand.closed());
        return Optional.of(loops);
    }

    private Optional<Cut> outermost(List<Cut> loops) {
        Cut largest = loops.getFirst();
        for (Cut loop : loops)
            if (loop.signedArea() > largest.signedArea())
                largest = loop;
        double area = largest.signedArea();
        for (Cut loop : loops)
            if (loop != largest && loop.y.length > 2 && counts(loop, largest, area))
                return Optional.empty();
        return Optional.of(area > 0 ? largest : Cut.NOTHING);
    }

    /** Whether a loop may bear on what is left besides the largest one. */
    private boolean counts(Cut loop, Cut largest, double area) {
        double own = loop.signedArea();
        if (area <= 0 || Math.abs(own) <= ROUNDING * area)
            return false;                                       // all of them run clockwise, or there is nothing to it
        if (-own >= area)
            return true;
        int last = loop.y.length - 1;                           // where it is sure not to touch the largest one
        boolean inside = Winding.number(largest.y, largest.z, 0.5 * (loop.y[0] + loop.y[last]), 0.5 * (loop.z[0] + loop.z[last])) != 0;
        return own < 0 ? inside && !filled : !inside || filled;
    }

    /** Corners in order, with the edges that lead on from them. */
    private static final class Strand {
        private final List<double[]> corners = new ArrayList<>();

        void add(double cornerY, double cornerZ, int edge) {
            if (!corners.isEmpty() && corners.getLast()[0] == cornerY && corners.getLast()[1] == cornerZ)
                corners.removeLast();
            corners.add(new double[] { cornerY, cornerZ, edge });
        }

        Cut closed() {
            while (corners.size() > 1 && corners.getLast()[0] == corners.getFirst()[0] && corners.getLast()[1] == corners.getFirst()[1])
                corners.removeLast();
            return new Cut(corners.stream().mapToDouble(c -> c[0]).toArray(), corners.stream().mapToDouble(c -> c[1]).toArray(),
                    corners.stream().mapToInt(c -> (int) c[2]).toArray());
        }
    }
}
