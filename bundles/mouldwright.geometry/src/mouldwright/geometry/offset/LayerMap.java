package mouldwright.geometry.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import mouldwright.geometry.loft.ShareSet;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.Slice;

/** The build-up of one side of a section: constant between breaks of the girth, apart from stretches that are bare. */
final class LayerMap {
    private record Cover(ShareSet shares, double thickness) { }

    private final List<Cover> covers = new ArrayList<>();
    private final ShareSet bare;

    LayerMap(Slice slice, BuildUp buildUp, boolean port) {
        bare = slice.bareShares(buildUp.bare(), port);
        for (Layer layer : buildUp.layers())
            if (covers(layer, slice))
                covers.add(new Cover(slice.shares(layer.band(), port), layer.thickness()));
    }

    /** A section belongs to what lies on the side it is seen from; at the ends of the body there is only the inside. */
    private static boolean covers(Layer layer, Slice slice) {
        double x = slice.x();
        boolean fromForward = x >= slice.loft().endX() || slice.side() == Side.FORWARD && x > slice.loft().startX();
        return fromForward ? layer.fromX() < x && x <= layer.toX() : layer.fromX() <= x && x < layer.toX();
    }

    /** Intervals over which thickness and bareness do not change, in order from bottom centre. */
    List<ShareSet.Interval> intervals() {
        TreeSet<Double> breaks = new TreeSet<>(List.of(0.0, 1.0));
        for (ShareSet.Interval i : bare.intervals())
            breaks.addAll(List.of(i.low(), i.high()));
        for (Cover cover : covers)
            for (ShareSet.Interval i : cover.shares.intervals())
                breaks.addAll(List.of(i.low(), i.high()));
        List<ShareSet.Interval> intervals = new ArrayList<>();
        double before = 0;
        for (double at : breaks.tailSet(0.0, false)) {
            intervals.add(new ShareSet.Interval(before, at));
            before = at;
        }
        return intervals;
    }

    boolean isBare(double share) {
        return bare.contains(share);
    }

    /** Sum of the layers at a share, metres, bare bands not considered. */
    double thickness(double share) {
        double sum = 0;
        for (Cover cover : covers)
            if (cover.shares.contains(share))
                sum += cover.thickness;
        return sum;
    }
}
