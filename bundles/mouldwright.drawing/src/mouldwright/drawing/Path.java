package mouldwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A line of strokes.
 *
 * @param start   where it begins
 * @param strokes in order
 * @param closed  whether it returns to its start by a straight line
 */
public record Path(Spot start, List<Stroke> strokes, boolean closed) {

    /** Takes a copy. */
    public Path {
        Objects.requireNonNull(start, "start");
        strokes = List.copyOf(strokes);
    }

    /** Straight from place to place. @param spots at least two */
    public static Path through(List<Spot> spots, boolean closed) {
        if (spots.size() < 2)
            throw new IllegalArgumentException("a line through " + spots.size() + " places");
        List<Stroke> strokes = new ArrayList<>(spots.size() - 1);
        for (Spot spot : spots.subList(1, spots.size()))
            strokes.add(new Stroke.Line(spot));
        return new Path(spots.getFirst(), strokes, closed);
    }

    /** A straight line. */
    public static Path line(Spot from, Spot to) {
        return through(List.of(from, to), false);
    }

    /** The edge of a box. */
    public static Path box(Extent box) {
        return through(List.of(new Spot(box.left(), box.bottom()), new Spot(box.right(), box.bottom()), new Spot(box.right(), box.top()), new Spot(box.left(), box.top())), true);
    }

    /** A whole circle, of two halves. */
    public static Path circle(Spot centre, double radius) {
        Spot left = centre.plus(-radius, 0), right = centre.plus(radius, 0);
        return new Path(left, List.of(new Stroke.Arc(right, 1), new Stroke.Arc(left, 1)), true);
    }

    /** By straight lines that leave it nowhere by more than a tolerance.
     *  @param tolerance mm, positive
     *  @return all corners, the start of a closed path once */
    public List<Spot> flattened(double tolerance) {
        List<Spot> spots = new ArrayList<>();
        spots.add(start);
        for (Stroke stroke : strokes)
            Flattening.add(spots, stroke, tolerance);
        if (closed && spots.size() > 1 && spots.getLast().distance(start) < 1e-9)
            spots.removeLast();
        return spots;
    }

    /** The least box round it, to within a tenth of a millimetre where it bends. */
    public Extent extent() {
        return Extent.of(flattened(0.1));
    }
}
