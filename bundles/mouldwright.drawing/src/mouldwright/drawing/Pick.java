package mouldwright.drawing;

import java.util.List;
import java.util.Optional;

/** Finds what is drawn at a place, so that it can be picked with a pointer. */
public final class Pick {

    private static final double FLATNESS = 0.2;

    private Pick() { }

    /**
     * The key of what lies at a place: of lines, circles and words the nearest within reach, else of areas the one in front.
     *
     * @param reach how far off a line may be, mm
     * @return its key, never empty; nothing where nothing has a key there
     */
    public static Optional<String> at(Drawing drawing, Spot place, double reach) {
        Optional<String> best = Optional.empty();
        Optional<String> area = Optional.empty();
        double least = reach;
        for (Layer layer : drawing.layers())
            for (Layer.Item item : layer.items()) {
                if (item.about().isEmpty() || !holds(item.mark().extent(), place, reach))
                    continue;
                if (item.mark() instanceof Mark.Area one) {
                    if (inside(one, place))
                        area = Optional.of(item.about());
                } else if (distance(item.mark(), place) <= least) {
                    least = distance(item.mark(), place);
                    best = Optional.of(item.about());
                }
            }
        return best.isPresent() ? best : area;
    }

    private static boolean holds(Extent box, Spot place, double reach) {
        return place.x() >= box.left() - reach && place.x() <= box.right() + reach && place.y() >= box.bottom() - reach && place.y() <= box.top() + reach;
    }

    private static double distance(Mark mark, Spot place) {
        return switch (mark) {
            case Mark.Line line -> distance(line.path().flattened(FLATNESS), line.path().closed(), place);
            case Mark.Circle circle -> Math.abs(circle.centre().distance(place) - circle.radius());
            case Mark.Words words -> 0;
            case Mark.Area area -> Double.MAX_VALUE;
        };
    }

    private static double distance(List<Spot> spots, boolean closed, Spot place) {
        double least = Double.MAX_VALUE;
        for (int i = closed ? 0 : 1; i < spots.size(); i++)
            least = Math.min(least, distance(spots.get(i == 0 ? spots.size() - 1 : i - 1), spots.get(i), place));
        return least;
    }

    private static double distance(Spot a, Spot b, Spot place) {
        double dx = b.x() - a.x(), dy = b.y() - a.y(), square = dx * dx + dy * dy;
        double share = square == 0 ? 0 : Math.clamp(((place.x() - a.x()) * dx + (place.y() - a.y()) * dy) / square, 0, 1);
        return a.toward(b, share).distance(place);
    }

    /** By the even-odd rule: a ray to the right crosses the rings an odd number of times. */
    private static boolean inside(Mark.Area area, Spot place) {
        boolean inside = false;
        for (Path ring : area.rings()) {
            List<Spot> spots = ring.flattened(FLATNESS);
            for (int i = 0, j = spots.size() - 1; i < spots.size(); j = i++) {
                Spot a = spots.get(i), b = spots.get(j);
                if (a.y() > place.y() != b.y() > place.y() && place.x() < (b.x() - a.x()) * (place.y() - a.y()) / (b.y() - a.y()) + a.x())
                    inside = !inside;
            }
        }
        return inside;
    }
}
