package mouldwright.geometry.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import mouldwright.geometry.loft.GirthRange;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePoint;

/** A part of a section with one kind of draft.
 *
 *  @param range where
 *  @param kind  which
 *  @param from  sine of the draft where it begins
 *  @param to    sine of the draft where it ends */
record DraftStretch(GirthRange range, Kind kind, double from, double to) {
    /** Places looked at in a range for a change of kind. */
    private static final int LOOKS = 24;

    enum Kind { UNDERCUT, LOW, ENOUGH }

    /** Divides a range where its draft passes 0 or the limit.
     *  @param sine  sine of the draft at a share of the stretch
     *  @param limit sine of the limit */
    static List<DraftStretch> divide(GirthRange range, DoubleUnaryOperator sine, double limit) {
        List<DraftStretch> parts = new ArrayList<>();
        double start = range.fromU(), before = start;
        for (int k = 1; k <= LOOKS; k++) {
            double u = k == LOOKS ? range.toU() : range.fromU() + (range.toU() - range.fromU()) * k / LOOKS;
            double at = before;
            while (kind(sine.applyAsDouble(at), limit) != kind(sine.applyAsDouble(u), limit)) {
                double[] change = change(sine, limit, at, u);
                parts.add(part(range.stretch(), start, change[0], sine, limit));
                start = at = change[1];
            }
            before = u;
        }
        parts.add(part(range.stretch(), start, range.toU(), sine, limit));
        return parts;
    }

    private static DraftStretch part(int stretch, double from, double to, DoubleUnaryOperator sine, double limit) {
        return new DraftStretch(new GirthRange(stretch, from, to), kind(sine.applyAsDouble(from), limit),
                sine.applyAsDouble(from), sine.applyAsDouble(to));
    }

    /** The two sides of the first change of kind found between two shares. */
    private static double[] change(DoubleUnaryOperator sine, double limit, double from, double to) {
        Kind kind = kind(sine.applyAsDouble(from), limit);
        double low = from, high = to;
        for (int round = 0; round < 40; round++) {
            double middle = 0.5 * (low + high);
            if (kind(sine.applyAsDouble(middle), limit) == kind)
                low = middle;
            else
                high = middle;
        }
        return new double[] { low, high };
    }

    private static Kind kind(double sine, double limit) {
        return sine < 0 ? Kind.UNDERCUT : sine < limit ? Kind.LOW : Kind.ENOUGH;
    }

    /** Sine of the draft of a section. @param image whether the mirror image to port is meant */
    static DoubleUnaryOperator sine(Slice slice, int stretch, Pull pull, boolean image) {
        double y = image ? -pull.y() : pull.y();
        return u -> {
            SurfacePoint p = slice.point(stretch, u);
            double sine = p.nx() * pull.x() + p.ny() * y + p.nz() * pull.z();
            return Math.abs(sine) < 1e-12 ? 0 : sine;               // upright walls are upright, whichever way they are rounded
        };
    }

    /** Whether another part follows this one without a gap. */
    boolean joins(DraftStretch next) {
        boolean sameStretch = next.range.stretch() == range.stretch() && next.range.fromU() - range.toU() < 1e-6;
        return sameStretch
                || next.range.stretch() == range.stretch() + 1 && range.toU() == 1 && next.range.fromU() == 0;
    }
}
