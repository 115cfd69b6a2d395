package mouldwright.exchange.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.exchange.SectionPoint;

/** Merges two rows of points, each in its order, into the shortest line from a start to an end: what is shortest up to a point of either row
 *  follows from what is shortest up to the points before it. */
final class ShortestMerge {

    private final List<SectionPoint> one;
    private final List<SectionPoint> other;
    /** Length up to point i of one and j of the other, by which of the two came last. */
    private final double[][][] length;

    ShortestMerge(List<SectionPoint> one, List<SectionPoint> other) {
        this.one = one;
        this.other = other;
        this.length = new double[one.size() + 1][other.size() + 1][2];
    }

    List<SectionPoint> order(Optional<SectionPoint> start, Optional<SectionPoint> end) {
        for (int i = 0; i <= one.size(); i++)
            for (int j = 0; j <= other.size(); j++) {
                length[i][j][0] = i == 0 ? Double.POSITIVE_INFINITY : shortest(i - 1, j, one.get(i - 1), start);
                length[i][j][1] = j == 0 ? Double.POSITIVE_INFINITY : shortest(i, j - 1, other.get(j - 1), start);
            }
        return walk(end);
    }

    private double shortest(int i, int j, SectionPoint to, Optional<SectionPoint> start) {
        if (i == 0 && j == 0)
            return start.map(to::distance).orElse(0.0);
        double fromOne = i == 0 ? Double.POSITIVE_INFINITY : length[i][j][0] + one.get(i - 1).distance(to);
        double fromOther = j == 0 ? Double.POSITIVE_INFINITY : length[i][j][1] + other.get(j - 1).distance(to);
        return Math.min(fromOne, fromOther);
    }

    private List<SectionPoint> walk(Optional<SectionPoint> end) {
        List<SectionPoint> backwards = new ArrayList<>();
        int i = one.size(), j = other.size();
        Optional<SectionPoint> next = end;
        while (i > 0 || j > 0) {
            double fromOne = length[i][j][0] + step(i == 0 ? Optional.empty() : Optional.of(one.get(i - 1)), next);
            double fromOther = length[i][j][1] + step(j == 0 ? Optional.empty() : Optional.of(other.get(j - 1)), next);
            SectionPoint point = j == 0 || i > 0 && fromOne <= fromOther ? one.get(--i) : other.get(--j);
            backwards.add(point);
            next = Optional.of(point);
        }
        return backwards.reversed();
    }

    private static double step(Optional<SectionPoint> from, Optional<SectionPoint> to) {
        return from.isPresent() && to.isPresent() ? from.get().distance(to.get()) : 0;
    }
}
