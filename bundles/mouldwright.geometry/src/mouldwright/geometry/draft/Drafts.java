package mouldwright.geometry.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.loft.GirthRange;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.ShareSet;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePlace;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.loft.TwoOrders;
import mouldwright.geometry.measure.Measured;
import mouldwright.geometry.measure.SpanRule;
import mouldwright.geometry.section.SectionKind;

/** Looks how a mould leaves the plug: draft = asin(n . p), n the outward normal and p the way of the mould. */
public final class Drafts {
    private final Loft loft;
    private final DraftOrder order;
    private final double limit;
    private final double[][] sums = new double[4][2];           // undercut, strip, low elsewhere, enough; two orders
    private double stripWidth;
    private Optional<DraftPlace> least = Optional.empty();

    private Drafts(Loft loft, DraftOrder order) {
        this.loft = loft;
        this.order = order;
        limit = Math.sin(order.limit());
    }

    /** Examines a part of a mould.
     *  @param loft      the body
     *  @param order     the part
     *  @param cancelled asked per patch; then a CancellationException ends the work */
    public static DraftReport examine(Loft loft, DraftOrder order, BooleanSupplier cancelled) {
        Drafts drafts = new Drafts(loft, order);
        new SpanRule(loft, cancelled).visit(order.region().fromX(), order.region().toX(), drafts::slice);
        Measured[] areas = new Measured[4];
        for (int i = 0; i < 4; i++)
            areas[i] = new Measured(drafts.sums[i][0], Math.abs(drafts.sums[i][0] - drafts.sums[i][1]));
        return new DraftReport(areas[0], areas[1], areas[2], areas[3], drafts.stripWidth, drafts.least);
    }

    private void slice(Slice slice, double high, double low) {
        side(slice, false, high, low);
        side(slice, true, high, low);
    }

    private void side(Slice slice, boolean port, double high, double low) {
        boolean image = port && loft.kind() == SectionKind.HALF;
        ShareSet moulded = order.shares(slice, port)
                .intersection(slice.bareShares(order.bare(), port).complement());
        List<DraftStretch> parts = new ArrayList<>();
        for (GirthRange range : slice.ranges(moulded, port))
            if (!slice.isBare(range.stretch()))
                parts.addAll(DraftStretch.divide(range,
                        DraftStretch.sine(slice, range.stretch(), order.pull(), image), limit));
        int i = 0;
        while (i < parts.size()) {
            int end = i + 1;
            while (end < parts.size() && parts.get(end).kind() == parts.get(i).kind() && parts.get(end - 1).joins(parts.get(end)))
                end++;
            group(slice, parts, i, end, image, high, low);
            i = end;
        }
    }

    /** Parts of one kind that follow one another. */
    private void group(Slice slice, List<DraftStretch> parts, int from, int to, boolean image, double high, double low) {
        DraftStretch.Kind kind = parts.get(from).kind();
        boolean strip = kind == DraftStretch.Kind.LOW && touchesParting(slice, parts, from, to);
        int sum = kind == DraftStretch.Kind.UNDERCUT ? 0 : kind == DraftStretch.Kind.ENOUGH ? 3 : strip ? 1 : 2;
        double width = 0;
        for (DraftStretch part : parts.subList(from, to)) {
            TwoOrders area = slice.integral(part.range());
            sums[sum][0] += area.high() * high;
            sums[sum][1] += area.low() * low;
            width += width(slice, part.range());
            if (!strip)
                least(slice, part, image);
        }
        if (strip)
            stripWidth = Math.max(stripWidth, width);
    }

    /** One end lies at an edge of the part or next to an undercut, and from there the draft grows. */
    private boolean touchesParting(Slice slice, List<DraftStretch> parts, int from, int to) {
        double first = parts.get(from).from(), last = parts.get(to - 1).to();
        boolean before = from == 0 || !parts.get(from - 1).joins(parts.get(from))
                || parts.get(from - 1).kind() == DraftStretch.Kind.UNDERCUT;
        boolean after = to == parts.size() || !parts.get(to - 1).joins(parts.get(to))
                || parts.get(to).kind() == DraftStretch.Kind.UNDERCUT;
        boolean atStart = before && !atCentre(slice, parts.get(from).range(), parts.get(from).range().fromU());
        boolean atEnd = after && !atCentre(slice, parts.get(to - 1).range(), parts.get(to - 1).range().toU());
        return atStart && first < last || atEnd && last < first;
    }

    /** Bottom and top centre are no edge of a part that covers both sides. */
    private boolean atCentre(Slice slice, GirthRange range, double u) {
        if (!(order.starboard() && order.port()))
            return false;
        double share = slice.place(range.stretch(), u).share();
        return share < 1e-9 || share > 1 - 1e-9;
    }

    private static double width(Slice slice, GirthRange range) {
        double from = slice.place(range.stretch(), range.fromU()).share(), to = slice.place(range.stretch(), range.toU()).share();
        return Math.abs(to - from) * slice.girth() / 2;
    }

    private void least(Slice slice, DraftStretch part, boolean image) {
        GirthRange range = part.range();
        for (double u : new double[] { range.fromU(), 0.5 * (range.fromU() + range.toU()), range.toU() }) {
            double sine = DraftStretch.sine(slice, range.stretch(), order.pull(), image).applyAsDouble(u);
            double angle = Math.asin(Math.clamp(sine, -1.0, 1.0));
            if (least.isEmpty() || angle < least.get().angle()) {
                SurfacePlace place = slice.place(range.stretch(), u);
                least = Optional.of(new DraftPlace(angle, place, image));
            }
        }
    }

    /** Sine of the draft at a point of the surface. */
    public static double sine(SurfacePoint point, Pull pull) {
        return point.nx() * pull.x() + point.ny() * pull.y() + point.nz() * pull.z();
    }
}
