package mouldwright.geometry.loft;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Parts of the half girth of one side, as shares from bottom centre.
 *
 *  @param intervals apart from one another, in order */
public record ShareSet(List<Interval> intervals) {
    /** Nothing. */
    public static final ShareSet NOTHING = new ShareSet(List.of());
    /** The whole half girth. */
    public static final ShareSet WHOLE = new ShareSet(List.of(new Interval(0, 1)));

    /** From one share to another. @param low 0 to 1 @param high not less */
    public record Interval(double low, double high) { }

    /** Keeps its own copy. */
    public ShareSet { intervals = List.copyOf(intervals); }

    /** One interval; empty if its ends are one place. */
    public static ShareSet between(double a, double b) {
        return a == b ? NOTHING : new ShareSet(List.of(new Interval(Math.min(a, b), Math.max(a, b))));
    }

    /** What lies in either. */
    public ShareSet union(ShareSet other) {
        List<Interval> all = new ArrayList<>(intervals);
        all.addAll(other.intervals);
        all.sort(Comparator.comparingDouble(Interval::low));
        List<Interval> merged = new ArrayList<>();
        for (Interval i : all) {
            if (!merged.isEmpty() && i.low <= merged.getLast().high)
                merged.set(merged.size() - 1,
                        new Interval(merged.getLast().low, Math.max(merged.getLast().high, i.high)));
            else
                merged.add(i);
        }
        return new ShareSet(merged);
    }

    /** What of the half girth lies outside. */
    public ShareSet complement() {
        List<Interval> gaps = new ArrayList<>();
        double at = 0;
        for (Interval i : intervals) {
            if (i.low > at)
                gaps.add(new Interval(at, i.low));
            at = Math.max(at, i.high);
        }
        if (at < 1)
            gaps.add(new Interval(at, 1));
        return new ShareSet(gaps);
    }

    /** What lies in both. */
    public ShareSet intersection(ShareSet other) {
        List<Interval> both = new ArrayList<>();
        for (Interval a : intervals)
            for (Interval b : other.intervals) {
                double low = Math.max(a.low, b.low), high = Math.min(a.high, b.high);
                if (low < high)
                    both.add(new Interval(low, high));
            }
        return new ShareSet(both);
    }

    /** Whether a share lies inside or at the edge of one of the intervals. */
    public boolean contains(double share) {
        return intervals.stream().anyMatch(i -> i.low <= share && share <= i.high);
    }
}
