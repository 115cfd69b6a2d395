package mouldwright.exchange.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts loose curves in order: those whose ends lie within a tolerance belong together, whichever way each was drawn. */
final class Joiner {

    private final List<Curve> curves;
    private final double tolerance;
    /** The joint at the start and at the end of each curve. */
    private final int[] joints;
    private final List<List<Integer>> ends = new ArrayList<>();
    private int count;

    /** What is wrong, with the place. */
    private String obstacle = "";

    /** @param tolerance in the curves' units, positive */
    Joiner(List<Curve> curves, double tolerance) {
        this.curves = curves;
        this.tolerance = tolerance;
        this.joints = new int[2 * curves.size()];
        gather();
    }

    /** Ends nearer than the tolerance are one joint. Places are kept in squares of that size, so each looks at its neighbours alone. */
    private void gather() {
        Map<List<Long>, List<Integer>> squares = new HashMap<>();
        List<Point> places = new ArrayList<>();
        for (int end = 0; end < joints.length; end++) {
            Point at = place(end);
            long column = (long) Math.floor(at.x() / tolerance), row = (long) Math.floor(at.y() / tolerance);
            int nearest = -1;
            for (long dx = -1; dx <= 1; dx++)
                for (long dy = -1; dy <= 1; dy++)
                    for (int joint : squares.getOrDefault(List.of(column + dx, row + dy), List.of()))
                        if (places.get(joint).distance(at) <= tolerance && (nearest < 0 || places.get(joint).distance(at) < places.get(nearest).distance(at)))
                            nearest = joint;
            if (nearest < 0) {
                nearest = places.size();
                places.add(at);
                ends.add(new ArrayList<>());
                squares.computeIfAbsent(List.of(column, row), square -> new ArrayList<>()).add(nearest);
            }
            joints[end] = nearest;
        }
        for (int i = 0; i < curves.size(); i++)
            if (!isSpeck(i)) {
                count++;
                ends.get(joints[2 * i]).add(2 * i);
                ends.get(joints[2 * i + 1]).add(2 * i + 1);
            }
    }

    /** Shorter than the tolerance: it lies within one joint. */
    private boolean isSpeck(int i) {
        return joints[2 * i] == joints[2 * i + 1] && curves.get(i).at(0.5).distance(curves.get(i).start()) <= tolerance;
    }

    /** Whether there is no curve longer than the tolerance. */
    boolean isEmpty() {
        return count == 0;
    }

    private Point place(int end) {
        Curve curve = curves.get(end / 2);
        return end % 2 == 0 ? curve.start() : curve.end();
    }

    /** Why they are no single chain; empty if they are. */
    String obstacle() {
        return obstacle;
    }

    /** The one chain they make; empty, with an obstacle, if they do not. */
    Optional<Chain> chain() {
        List<Integer> loose = new ArrayList<>();
        for (int joint = 0; joint < ends.size(); joint++) {
            if (ends.get(joint).size() > 2)
                return stopped(ends.get(joint).size() + " ends meet at " + words(place(ends.get(joint).getFirst())) + ", where an outline has two");
            if (ends.get(joint).size() == 1)
                loose.add(joint);
        }
        List<Curve> ordered = walk(loose.isEmpty() ? ends.stream().filter(joint -> !joint.isEmpty()).findFirst().orElseThrow().getFirst()
                : ends.get(loose.getFirst()).getFirst());
        if (ordered.size() < count)
            return stopped(loose.size() > 2 ? gap(loose) : "it is in several pieces that do not touch");
        return Optional.of(new Chain(ordered, loose.isEmpty()));
    }

    private Optional<Chain> stopped(String why) {
        obstacle = why;
        return Optional.empty();
    }

    private List<Curve> walk(int from) {
        List<Curve> ordered = new ArrayList<>();
        int end = from;
        while (end >= 0 && ordered.size() < count) {
            Curve curve = curves.get(end / 2);
            ordered.add(end % 2 == 0 ? curve : curve.reversed());
            int out = end ^ 1, next = -1;
            for (int other : ends.get(joints[out]))
                if (other != out)
                    next = other;
            end = next == from ? -1 : next;
        }
        return ordered;
    }

    /** The narrowest gap between two loose ends of different curves. */
    private String gap(List<Integer> loose) {
        List<Point> places = loose.stream().limit(1000).map(joint -> place(ends.get(joint).getFirst())).toList();
        double least = Double.POSITIVE_INFINITY;
        Point at = places.getFirst();
        for (int i = 0; i < places.size(); i++)
            for (int j = i + 1; j < places.size(); j++)
                if (places.get(i).distance(places.get(j)) < least) {
                    least = places.get(i).distance(places.get(j));
                    at = places.get(i);
                }
        return "it is in pieces; the narrowest gap is " + figure(least) + " wide, at " + words(at);
    }

    /** A place as one reads it off the drawing. */
    static String words(Point at) {
        return figure(at.x()) + ", " + figure(at.y());
    }

    static String figure(double value) {
        double rounded = Math.rint(value * 1e4) / 1e4 + 0.0;
        return rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded);
    }
}
