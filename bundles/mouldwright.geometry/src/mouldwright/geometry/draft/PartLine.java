package mouldwright.geometry.draft;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.loft.GirthRange;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePlace;
import mouldwright.geometry.loft.SurfacePoint;

/** A line along a part of a mould, always at the same share of what the part covers of the section: where a stiffener runs. */
public final class PartLine {

    /** Chords of a span between stations. */
    private static final int CHORDS = 16;
    /** Gaps of the moulded girth narrower than this share of the half girth do not part it. */
    private static final double SAME = 1e-7;

    /** Moulded shares of the girth, starboard from 0 at bottom centre to 1 at top centre, port from there to 2. */
    private record Ring(List<double[]> runs) {

        double total() {
            return runs.stream().mapToDouble(run -> run[1] - run[0]).sum();
        }

        /** The place, 0 to 2 and over, at a share of all runs. */
        double at(double share) {
            double left = share * total();
            for (double[] run : runs) {
                if (left <= run[1] - run[0])
                    return run[0] + left;
                left -= run[1] - run[0];
            }
            return runs.getLast()[1];
        }
    }

    private PartLine() { }

    /** The line.
     *  @param share     of the part's moulded girth, 0 to 1, going round over the middle of the part
     *  @param cancelled asked per span; then a CancellationException ends the work
     *  @return empty where the part covers nothing */
    public static Optional<LongLine> along(Loft loft, DraftOrder order, double share, BooleanSupplier cancelled) {
        double from = Math.max(order.region().fromX(), loft.startX()), to = Math.min(order.region().toX(), loft.endX());
        List<SurfacePoint> points = new ArrayList<>();
        for (int span = 0; span < loft.spans(); span++) {
            double a = loft.stations().get(span), b = loft.stations().get(span + 1);
            if (a >= to || b <= from)
                continue;
            if (cancelled.getAsBoolean())
                throw new CancellationException();
            double low = from <= a ? 0 : loft.shareInSpan(span, from), high = to >= b ? 1 : loft.shareInSpan(span, to);
            for (int k = points.isEmpty() ? 0 : 1; k <= CHORDS; k++)
                point(loft.inSpan(span, low + (high - low) * k / CHORDS), order, share).ifPresent(points::add);
        }
        return points.size() < 2 ? Optional.empty() : Optional.of(LongLine.through(points));
    }

    private static Optional<SurfacePoint> point(Slice slice, DraftOrder order, double share) {
        if (slice.isDegenerate())
            return Optional.of(slice.point(0, 0));
        Ring ring = ring(slice, order);
        if (ring.runs().isEmpty())
            return Optional.empty();
        double at = ring.at(share) % 2;
        boolean port = at > 1;
        SurfacePlace place = slice.placeAtShare(port ? 2 - at : at, port);
        return Optional.of(PartEdges.onSide(slice, slice.point(place.stretch(), place.u()), port));
    }

    private static Ring ring(Slice slice, DraftOrder order) {
        List<double[]> runs = new ArrayList<>();
        for (boolean port : new boolean[] {false, true})
            for (GirthRange range : PartEdges.moulded(slice, order.shares(slice, port), order.bare(), port)) {
                double a = slice.place(range.stretch(), range.fromU()).share(), b = slice.place(range.stretch(), range.toU()).share();
                double low = Math.min(a, b), high = Math.max(a, b);
                if (high > low)
                    runs.add(port ? new double[] {2 - high, 2 - low} : new double[] {low, high});
            }
        runs.sort(Comparator.comparingDouble(run -> run[0]));
        return new Ring(fromWidestGap(runs));
    }

    /** The same runs, going round from the widest gap, so that a part that reaches over bottom centre is one stretch. */
    private static List<double[]> fromWidestGap(List<double[]> runs) {
        if (runs.isEmpty())
            return runs;
        double widest = runs.getFirst()[0] + 2 - runs.getLast()[1];
        int first = 0;
        for (int i = 1; i < runs.size(); i++)
            if (runs.get(i)[0] - runs.get(i - 1)[1] > widest + SAME) {
                widest = runs.get(i)[0] - runs.get(i - 1)[1];
                first = i;
            }
        List<double[]> turned = new ArrayList<>(runs.subList(first, runs.size()));
        for (double[] run : runs.subList(0, first))
            turned.add(new double[] {run[0] + 2, run[1] + 2});
        return turned;
    }
}
