package mouldwright.exchange.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import mouldwright.exchange.Corners;
import mouldwright.exchange.SectionPoint;

/** The points a table of offsets gives of one section. Those on waterlines follow one another upward, those on buttocks outward; how the two
 *  rows of points go between one another is not written, so the order is taken in which the outline is shortest. Of a section that closes above, buttocks go out below
 *  and come back above. */
final class SectionChains {

    /** Nearer than this two figures of a table mean one point, metres: less than tables are rounded to. */
    private static final double SAME = 1e-4;

    /** A point on a buttock this share of the way from one neighbour to the other, or less, stands too near beside a waterline. */
    private static final double BESIDE = 0.25;

    private final List<SectionPoint> waterlines = new ArrayList<>();
    private final List<SectionPoint> buttocks = new ArrayList<>();
    private final List<SectionPoint> above = new ArrayList<>();
    private final List<SectionPoint> diagonals = new ArrayList<>();
    private final Map<String, Double> heights = new TreeMap<>();
    private final Map<String, Double> breadths = new TreeMap<>();

    void waterline(double height, double halfBreadth) {
        waterlines.add(SectionPoint.smooth(halfBreadth, height));
    }

    void buttock(double out, double height, RowLabel.Edge edge) {
        (edge == RowLabel.Edge.UPPER ? above : buttocks).add(SectionPoint.smooth(out, height));
    }

    void diagonal(double halfBreadth, double height) {
        diagonals.add(SectionPoint.smooth(halfBreadth, height));
    }

    void height(String line, double height) {
        heights.put(line, height);
    }

    void breadth(String line, double halfBreadth) {
        breadths.put(line, halfBreadth);
    }

    /** A line of which one figure is given and the other not, in words; of the keel the height is enough. */
    Optional<String> halfGiven() {
        Optional<String> low = heights.keySet().stream().filter(line -> !line.equals(RowLabel.KEEL) && !breadths.containsKey(line))
                .map(line -> "a height of the " + line + " and no half-breadth").findFirst();
        return low.or(() -> breadths.keySet().stream().filter(line -> !heights.containsKey(line))
                .map(line -> "a half-breadth of the " + line + " and no height").findFirst());
    }

    /** The outline from the keel to the sheer, or to where it closes above. */
    List<SectionPoint> outline() {
        waterlines.sort(Comparator.comparingDouble(SectionPoint::z));
        buttocks.sort(Comparator.comparingDouble(SectionPoint::y));
        above.sort(Comparator.comparingDouble(SectionPoint::y));
        Optional<SectionPoint> keel = Optional.ofNullable(heights.get(RowLabel.KEEL))
                .map(z -> SectionPoint.smooth(breadths.getOrDefault(RowLabel.KEEL, 0.0), z))
                .or(() -> above.isEmpty() || buttocks.isEmpty() || buttocks.getFirst().y() > SAME ? Optional.empty() : Optional.of(buttocks.removeFirst()));
        Optional<SectionPoint> sheer = Optional.ofNullable(heights.get(RowLabel.SHEER)).map(z -> SectionPoint.smooth(breadths.get(RowLabel.SHEER), z))
                .or(() -> above.isEmpty() || above.getFirst().y() > SAME ? Optional.empty() : Optional.of(above.removeFirst()));
        keel.ifPresent(end -> buttocks.removeIf(point -> isClosure(point, end)));
        sheer.ifPresent(end -> above.removeIf(point -> isClosure(point, end)));
        buttocks.addAll(above.reversed());
        List<SectionPoint> merged = new ArrayList<>();
        keel.ifPresent(merged::add);
        new ShortestMerge(waterlines, buttocks).order(keel, sheer).forEach(point -> append(merged, point));
        sheer.ifPresent(end -> end(merged, end, keel.isPresent()));
        diagonals.forEach(point -> insert(merged, point));
        thin(merged);
        knuckles().forEach(knuckle -> insert(merged, knuckle));
        return Corners.markedAtCentreline(merged);
    }

    /** A level line from the end of a section to the centreline closes it and is none of its points. */
    private static boolean isClosure(SectionPoint point, SectionPoint end) {
        return end.y() > SAME && point.y() < end.y() && Math.abs(point.z() - end.z()) <= SAME;
    }

    private static void append(List<SectionPoint> merged, SectionPoint point) {
        if (merged.isEmpty() || merged.getLast().distance(point) > SAME)
            merged.add(point);
    }

    private static void end(List<SectionPoint> merged, SectionPoint end, boolean keel) {
        while (merged.size() > (keel ? 1 : 0) && merged.getLast().distance(end) <= SAME)
            merged.removeLast();
        append(merged, end);
    }

    /** Leaves out points on buttocks and diagonals that fall close beside one on a waterline: of two such points the rounding, and not the shape, gives the
     *  direction of a curve through both. */
    private void thin(List<SectionPoint> outline) {
        for (int i = outline.size() - 2; i > 0; i--) {
            SectionPoint before = outline.get(i - 1), here = outline.get(i), after = outline.get(i + 1);
            double back = before.distance(here), on = here.distance(after);
            boolean beside = back < on ? waterlines.contains(before) : waterlines.contains(after);
            if (beside && (buttocks.contains(here) || diagonals.contains(here)) && Math.min(back, on) < BESIDE * (back + on))
                outline.remove(i);
        }
    }

    private List<SectionPoint> knuckles() {
        List<SectionPoint> all = new ArrayList<>();
        heights.forEach((line, z) -> {
            if (!line.equals(RowLabel.KEEL) && !line.equals(RowLabel.SHEER))
                all.add(new SectionPoint(breadths.get(line), z, true, Optional.of(line)));
        });
        all.sort(Comparator.comparingDouble(SectionPoint::z));
        return all;
    }

    /** Takes the place of a point that is the same, or goes where it lengthens the outline least. */
    private static void insert(List<SectionPoint> outline, SectionPoint knuckle) {
        int best = outline.size();
        double least = outline.isEmpty() ? 0 : outline.getLast().distance(knuckle);
        for (int i = 0; i < outline.size(); i++) {
            if (outline.get(i).distance(knuckle) <= SAME) {
                outline.set(i, knuckle);
                return;
            }
            double more = i == 0 ? outline.get(0).distance(knuckle)
                    : outline.get(i - 1).distance(knuckle) + knuckle.distance(outline.get(i)) - outline.get(i - 1).distance(outline.get(i));
            if (more < least) {
                least = more;
                best = i;
            }
        }
        outline.add(best, knuckle);
    }
}
