package mouldwright.geometry.plane;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Overlays two simple rings that cross, by walking along one up to a crossing and on along the other.
 *  Source: K. Weiler and P. Atherton, Hidden surface removal using polygon area sorting, 1977. */
final class RingOverlay {

    /** What is wanted of the two. */
    enum Wanted {
        /** What lies in both. */
        BOTH,
        /** What lies in either. */
        EITHER,
        /** What lies in the first and not in the second. */
        FIRST_ALONE
    }

    private final Outline first;
    private final Outline second;
    private final List<Crossing> crossings;
    private final Wanted wanted;
    private final Integer[] alongFirst;
    private final Integer[] alongSecond;
    private final int[] placeOnFirst;
    private final int[] placeOnSecond;

    private RingOverlay(Outline first, Outline second, List<Crossing> crossings, Wanted wanted) {
        this.first = first;
        this.second = second;
        this.crossings = crossings;
        this.wanted = wanted;
        alongFirst = order(Comparator.comparingInt((Integer c) -> crossings.get(c).first())
                .thenComparingDouble(c -> crossings.get(c).onFirst()));
        alongSecond = order(Comparator.comparingInt((Integer c) -> crossings.get(c).second())
                .thenComparingDouble(c -> crossings.get(c).onSecond()));
        placeOnFirst = places(alongFirst);
        placeOnSecond = places(alongSecond);
    }

    private Integer[] order(Comparator<Integer> by) {
        Integer[] order = new Integer[crossings.size()];
        Arrays.setAll(order, c -> c);
        Arrays.sort(order, by);
        return order;
    }

    private static int[] places(Integer[] order) {
        int[] places = new int[order.length];
        for (int i = 0; i < order.length; i++)
            places[order[i]] = i;
        return places;
    }

    /** Overlays.
     *  @param crossings all of them, at least one, the first ring's edges named first; the second ring's edges are counted on from the first's
     *  @return the rings of what is wanted, counter-clockwise ones and, as holes, clockwise ones; empty if two crossings lie so
     *          close that rounding has changed their order */
    static Optional<List<double[][]>> of(Outline first, Outline second, List<Crossing> crossings, Wanted wanted) {
        return new RingOverlay(first, second, crossings, wanted).rings();
    }

    private Optional<List<double[][]>> rings() {
        if (!takesTurns(alongFirst) || !takesTurns(alongSecond))
            return Optional.empty();
        List<double[][]> rings = new ArrayList<>();
        boolean[] used = new boolean[crossings.size()];
        for (int c = 0; c < used.length; c++)
            if (!used[c] && crossings.get(c).enters() == (wanted == Wanted.BOTH))
                rings.add(walk(c, used));
        return Optional.of(rings);
    }

    /** A ring that goes into another comes out again before it goes in anew. */
    private boolean takesTurns(Integer[] order) {
        for (int i = 0; i < order.length; i++)
            if (crossings.get(order[i]).enters() == crossings.get(order[(i + 1) % order.length]).enters())
                return false;
        return true;
    }

    private double[][] walk(int start, boolean[] used) {
        List<double[]> corners = new ArrayList<>();
        int at = start;
        do {
            used[at] = true;
            add(corners, crossings.get(at).y(), crossings.get(at).z());
            int turn = alongFirst[(placeOnFirst[at] + 1) % alongFirst.length];
            Crossing here = crossings.get(at), there = crossings.get(turn);
            forward(corners, first, here.first(), here.onFirst(), there.first(), there.onFirst());
            add(corners, there.y(), there.z());
            int n = first.size(), step = wanted == Wanted.FIRST_ALONE ? alongSecond.length - 1 : 1;
            at = alongSecond[(placeOnSecond[turn] + step) % alongSecond.length];
            Crossing back = crossings.get(at);
            if (wanted == Wanted.FIRST_ALONE)
                backward(corners, there.second() - n, there.onSecond(), back.second() - n, back.onSecond());
            else
                forward(corners, second, there.second() - n, there.onSecond(), back.second() - n, back.onSecond());
        } while (at != start);
        while (corners.size() > 1 && Arrays.equals(corners.getFirst(), corners.getLast()))
            corners.removeLast();
        return new double[][] { corners.stream().mapToDouble(c -> c[0]).toArray(), corners.stream().mapToDouble(c -> c[1]).toArray() };
    }

    /** The corners of a ring between a place on one edge and the next crossing on the same or another edge. */
    private static void forward(List<double[]> corners, Outline ring, int from, double fromAlong, int to, double toAlong) {
        int n = ring.size(), count = to == from && toAlong > fromAlong ? 0 : Math.floorMod(to - from - 1, n) + 1;
        for (int k = 1; k <= count; k++)
            add(corners, ring.y((from + k) % n), ring.z((from + k) % n));
    }

    private void backward(List<double[]> corners, int from, double fromAlong, int to, double toAlong) {
        int n = second.size(), count = to == from && toAlong < fromAlong ? 0 : Math.floorMod(from - to - 1, n) + 1;
        for (int k = 0; k < count; k++)
            add(corners, second.y(Math.floorMod(from - k, n)), second.z(Math.floorMod(from - k, n)));
    }

    private static void add(List<double[]> corners, double y, double z) {
        if (corners.isEmpty() || corners.getLast()[0] != y || corners.getLast()[1] != z)
            corners.add(new double[] { y, z });
    }
}
