package mouldwright.geometry.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthRange;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.ShareSet;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.TwoOrders;
import mouldwright.geometry.measure.Measured;
import mouldwright.geometry.measure.SpanRule;

/** How the parts of a mould share the moulded surface of a body among them; areas in square metres, end faces not counted. */
public final class PartAreas {

    private final Loft loft;
    private final Bare bare;
    private final SpanRule rule;

    /** Parts of a body.
     *  @param bare      what of it is not moulded
     *  @param cancelled asked per span; then a CancellationException ends the work */
    public PartAreas(Loft loft, Bare bare, BooleanSupplier cancelled) {
        this.loft = loft;
        this.bare = bare;
        this.rule = new SpanRule(loft, cancelled);
    }

    /** Surface of a part between two planes across the body. */
    public Measured area(DraftOrder part, double fromX, double toX) {
        return sum(Math.max(fromX, part.region().fromX()), Math.min(toX, part.region().toX()),
                part::shares);
    }

    /** Moulded surface that no part covers. */
    public Measured uncovered(List<DraftOrder> parts) {
        return perStretch(parts, (slice, port) -> {
            ShareSet covered = ShareSet.NOTHING;
            for (DraftOrder part : parts)
                covered = covered.union(within(slice, part) ? part.shares(slice, port) : ShareSet.NOTHING);
            return covered.complement();
        });
    }

    /** Moulded surface that more than one part covers. */
    public Measured doubled(List<DraftOrder> parts) {
        return perStretch(parts, (slice, port) -> {
            ShareSet once = ShareSet.NOTHING, twice = ShareSet.NOTHING;
            for (DraftOrder part : parts) {
                ShareSet own = within(slice, part) ? part.shares(slice, port) : ShareSet.NOTHING;
                twice = twice.union(once.intersection(own));
                once = once.union(own);
            }
            return twice;
        });
    }

    /** Which shares of one side of a section are meant. */
    private interface Shares {
        ShareSet of(Slice slice, boolean port);
    }

    /** Between planes at which a part begins or ends nothing jumps, so quadrature keeps its order. */
    private Measured perStretch(List<DraftOrder> parts, Shares shares) {
        TreeSet<Double> planes = new TreeSet<>(List.of(loft.startX(), loft.endX()));
        for (DraftOrder part : parts) {
            planes.add(Math.clamp(part.region().fromX(), loft.startX(), loft.endX()));
            planes.add(Math.clamp(part.region().toX(), loft.startX(), loft.endX()));
        }
        Measured all = Measured.ZERO;
        List<Double> xs = new ArrayList<>(planes);
        for (int i = 1; i < xs.size(); i++)
            all = all.plus(sum(xs.get(i - 1), xs.get(i), shares));
        return all;
    }

    private static boolean within(Slice slice, DraftOrder part) {
        return slice.x() >= part.region().fromX() && slice.x() <= part.region().toX();
    }

    private Measured sum(double fromX, double toX, Shares shares) {
        double[] sums = new double[2];
        if (toX > fromX)
            rule.visit(fromX, toX, (slice, high, low) -> {
                for (boolean port : new boolean[] {false, true}) {
                    ShareSet moulded = slice.shares(GirthBand.WHOLE, port).intersection(slice.bareShares(bare, port).complement());
                    for (GirthRange range : slice.ranges(moulded.intersection(shares.of(slice, port)), port))
                        if (!slice.isBare(range.stretch())) {
                            TwoOrders area = slice.integral(range);
                            sums[0] += area.high() * high;
                            sums[1] += area.low() * low;
                        }
                }
            });
        return new Measured(sums[0], Math.abs(sums[0] - sums[1]));
    }
}
