package mouldwright.geometry.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePlace;
import mouldwright.geometry.loft.SurfacePoint;

/** A line along the body, such as an edge of a mould, on one side.
 *
 *  @param points from forward to aft
 *  @param length metres */
public record LongLine(List<SurfacePoint> points, double length) {
    /** Chords of a span between stations. */
    private static final int CHORDS = 16;

    /** Keeps its own copy. */
    public LongLine { points = List.copyOf(points); }

    /** The line of a place of the girth; empty if no such line is known.
     *  @param loft  the body
     *  @param place of the girth
     *  @param port  on the port side; no matter for a half body
     *  @param fromX forward end, metres aft; cut off where the body ends
     *  @param toX   after end, metres aft */
    public static Optional<LongLine> along(Loft loft, GirthPlace place, boolean port, double fromX, double toX) {
        double from = Math.max(fromX, loft.startX()), to = Math.min(toX, loft.endX());
        List<SurfacePoint> points = new ArrayList<>();
        for (int span = 0; span < loft.spans(); span++) {
            double a = loft.stations().get(span), b = loft.stations().get(span + 1);
            if (a >= to || b <= from)
                continue;
            double low = from <= a ? 0 : loft.shareInSpan(span, from), high = to >= b ? 1 : loft.shareInSpan(span, to);
            for (int k = points.isEmpty() ? 0 : 1; k <= CHORDS; k++) {
                Slice slice = loft.inSpan(span, low + (high - low) * k / CHORDS);
                Optional<Double> share = slice.share(place, port);
                if (share.isEmpty())
                    return Optional.empty();
                SurfacePlace at = slice.placeAtShare(share.get(), port);
                points.add(slice.point(at.stretch(), at.u()));
            }
        }
        return Optional.of(through(points));
    }

    /** The line through some points, by its chords. */
    static LongLine through(List<SurfacePoint> points) {
        double length = 0;
        for (int i = 0; i + 1 < points.size(); i++) {
            SurfacePoint p = points.get(i), q = points.get(i + 1);
            length += Math.hypot(Math.hypot(q.x() - p.x(), q.y() - p.y()), q.z() - p.z());
        }
        return new LongLine(points, length);
    }
}
