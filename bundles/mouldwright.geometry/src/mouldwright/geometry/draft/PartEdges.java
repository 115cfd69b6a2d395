package mouldwright.geometry.draft;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthRange;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.ShareSet;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.section.SectionKind;

/** Traces the edges of a part of a mould along the body: where it is parted from another part, and where it ends because what
 *  lies beyond is bare. Edges across the body, at its ends, are those of {@link #round}. */
public final class PartEdges {

    /** Chords of a span between stations. */
    private static final int CHORDS = 16;
    /** Shares of the girth nearer than this are one place. */
    private static final double SAME = 1e-7;
    /** How far past an edge it is looked whether the surface goes on, as a share of the half girth. */
    private static final double PAST = 1e-5;
    /** Runs narrower than this share of the half girth are slivers along the middle and have no edges of their own. */
    private static final double SLIVER = 4 * PAST;
    /** Ends of edges at a station that are one place, metres and as a share of the girth. */
    private static final double TOUCHING = 1e-6;
    /** How far an edge may run between two sections, as a share of the girth, while it passes over the middle. */
    private static final double NEAR = 0.1;
    /** Girth of a section that is a point, metres: edges begin and end there. */
    private static final double POINTED = 1e-9;
    /** How far chords may leave the outline of an end, metres. */
    private static final double CHORD = 1e-4;

    private final Loft loft;
    private final DraftOrder order;
    private final List<Trace> done = new ArrayList<>();
    private Map<String, Trace> open = new LinkedHashMap<>();
    private SurfacePoint apex;

    private PartEdges(Loft loft, DraftOrder order) {
        this.loft = loft;
        this.order = order;
    }

    /** An edge while it is traced. */
    private static final class Trace {
        private final PartEdge.Kind kind;
        private final boolean port;
        private final List<SurfacePoint> points = new ArrayList<>();

        Trace(PartEdge.Kind kind, boolean port) {
            this.kind = kind;
            this.port = port;
        }
    }

    /** An interval of shares with the places of its ends on the outline. */
    private record Run(double low, double high, GirthRange first, GirthRange last) { }

    /** The edges that run along the body.
     *  @param cancelled asked per span; then a CancellationException ends the work */
    public static List<PartEdge> along(Loft loft, DraftOrder order, BooleanSupplier cancelled) {
        PartEdges edges = new PartEdges(loft, order);
        edges.trace(cancelled);
        return edges.done.stream().filter(trace -> trace.points.size() > 1)
                .map(trace -> new PartEdge(trace.kind, trace.port, LongLine.through(trace.points))).toList();
    }

    /** The moulded outline of a part at one x, run by run: its edge where the body, or the part, ends there.
     *  @param kind what lies beyond */
    public static List<PartEdge> round(Loft loft, DraftOrder order, double x, Side seen, PartEdge.Kind kind) {
        Slice slice = loft.at(x, seen);
        if (slice.isDegenerate())
            return List.of();
        List<PartEdge> edges = new ArrayList<>();
        for (boolean port : new boolean[] {false, true})
            for (GirthRange range : moulded(slice, order.shares(slice, port), order.bare(), port)) {
                List<SurfacePoint> points = new ArrayList<>();
                for (double u : slice.chords(range, CHORD))
                    points.add(onSide(slice, slice.point(range.stretch(), u), port));
                edges.add(new PartEdge(kind, port, LongLine.through(points)));
            }
        return edges;
    }

    private void trace(BooleanSupplier cancelled) {
        double from = Math.max(order.region().fromX(), loft.startX()), to = Math.min(order.region().toX(), loft.endX());
        for (int span = 0; span < loft.spans(); span++) {
            double a = loft.stations().get(span), b = loft.stations().get(span + 1);
            if (a >= to || b <= from)
                continue;
            if (cancelled.getAsBoolean())
                throw new CancellationException();
            double low = from <= a ? 0 : loft.shareInSpan(span, from), high = to >= b ? 1 : loft.shareInSpan(span, to);
            for (int k = 0; k <= CHORDS; k++)
                step(loft.inSpan(span, low + (high - low) * k / CHORDS), k == 0);
        }
        done.addAll(open.values());
        done.sort(Comparator.comparing(trace -> trace.kind));
    }

    /** Carries each edge on to the next section, or ends it and begins another. */
    private void step(Slice slice, boolean newSpan) {
        if (slice.isDegenerate() && slice.girth() < POINTED) {
            apex = slice.point(0, 0);
            open.values().forEach(trace -> trace.points.add(apex));
            done.addAll(open.values());
            open = new LinkedHashMap<>();
            return;
        }
        List<Found> found = new ArrayList<>();
        List<Run> own = runs(slice, order.shares(slice, false), false), ownPort = runs(slice, order.shares(slice, true), true);
        List<Run> all = runs(slice, ShareSet.WHOLE, false);
        List<Run> allPort = loft.kind() == SectionKind.HALF ? all : runs(slice, ShareSet.WHOLE, true);
        find(slice, false, own, all, ownPort, allPort, found);
        find(slice, true, ownPort, allPort, own, all, found);
        Map<String, Trace> next = new LinkedHashMap<>();
        double touching = TOUCHING * slice.girth() + TOUCHING;
        found.forEach(edge -> carryOn(edge, open.get(edge.key()), newSpan ? touching : Double.POSITIVE_INFINITY, next));
        for (Found edge : found)
            if (!next.containsKey(edge.key()))
                carryOn(edge, nearest(edge, next), newSpan ? touching : NEAR * slice.girth(), next);
        for (Found edge : found)
            if (!next.containsKey(edge.key())) {
                Trace trace = new Trace(edge.kind(), edge.port());
                if (apex != null)
                    trace.points.add(apex);
                trace.points.add(edge.point());
                next.put(edge.key(), trace);
            }
        apex = null;
        for (Trace trace : open.values())
            if (!next.containsValue(trace))
                done.add(trace);
        open = next;
    }

    /** An edge found at a section. */
    private record Found(String key, PartEdge.Kind kind, boolean port, SurfacePoint point) { }

    private void find(Slice slice, boolean port, List<Run> own, List<Run> all, List<Run> ownOpposite, List<Run> allOpposite, List<Found> found) {
        for (int i = 0; i < own.size(); i++) {
            Run run = own.get(i);
            String key = (port ? "p" : "s") + own.size() + "/" + i;
            SurfacePoint low = onSide(slice, lowPoint(slice, run, port), port), high = onSide(slice, highPoint(slice, run, port), port);
            kind(run.low(), -PAST, all, ownOpposite, allOpposite).ifPresent(kind -> found.add(new Found(key + "l", kind, port, low)));
            kind(run.high(), PAST, all, ownOpposite, allOpposite).ifPresent(kind -> found.add(new Found(key + "h", kind, port, high)));
        }
    }

    private static void carryOn(Found edge, Trace trace, double reach, Map<String, Trace> next) {
        if (trace != null && trace.kind == edge.kind() && distance(trace.points.getLast(), edge.point()) <= reach) {
            trace.points.add(edge.point());
            next.put(edge.key(), trace);
        }
    }

    /** The edge of the last section that is nearest, among those not carried on yet: where a line passes over the middle. */
    private Trace nearest(Found edge, Map<String, Trace> next) {
        return open.values().stream().filter(trace -> trace.kind == edge.kind() && !next.containsValue(trace))
                .min(Comparator.comparingDouble(trace -> distance(trace.points.getLast(), edge.point()))).orElse(null);
    }

    private static double distance(SurfacePoint p, SurfacePoint q) {
        return Math.hypot(Math.hypot(p.x() - q.x(), p.y() - q.y()), p.z() - q.z());
    }

    /** What lies past an edge; empty where the part itself goes on over the centreline. */
    private static Optional<PartEdge.Kind> kind(double share, double step, List<Run> all, List<Run> ownOpposite, List<Run> allOpposite) {
        boolean centre = share < PAST || share > 1 - PAST;
        double past = !centre ? share + step : share < PAST ? 2 * PAST : 1 - 2 * PAST;
        if (!contains(centre ? allOpposite : all, past))
            return Optional.of(PartEdge.Kind.OPEN);
        return centre && contains(ownOpposite, past) ? Optional.empty() : Optional.of(PartEdge.Kind.PARTING);
    }

    private static boolean contains(List<Run> runs, double share) {
        return runs.stream().anyMatch(run -> run.low() <= share && share <= run.high());
    }

    /** The place itself, or to port of a half body its mirror image. */
    static SurfacePoint onSide(Slice slice, SurfacePoint p, boolean port) {
        return port && slice.loft().kind() == SectionKind.HALF
                ? new SurfacePoint(p.x(), -p.y(), p.z(), p.nx(), -p.ny(), p.nz(), -p.yu(), p.zu(), -p.yx(), p.zx()) : p;
    }

    private static SurfacePoint lowPoint(Slice slice, Run run, boolean port) {
        boolean back = port && slice.loft().kind() == SectionKind.FULL;
        return slice.point(run.first().stretch(), back ? run.first().toU() : run.first().fromU());
    }

    private static SurfacePoint highPoint(Slice slice, Run run, boolean port) {
        boolean back = port && slice.loft().kind() == SectionKind.FULL;
        return slice.point(run.last().stretch(), back ? run.last().fromU() : run.last().toU());
    }

    static List<GirthRange> moulded(Slice slice, ShareSet shares, Bare bare, boolean port) {
        return slice.ranges(shares.intersection(slice.bareShares(bare, port).complement()), port).stream().filter(range -> !slice.isBare(range.stretch())).toList();
    }

    /** The moulded runs of one side, from bottom to top centre, neighbouring stretches joined. */
    private List<Run> runs(Slice slice, ShareSet shares, boolean port) {
        List<Run> parts = new ArrayList<>();
        for (GirthRange range : moulded(slice, shares, order.bare(), port)) {
            double from = slice.place(range.stretch(), range.fromU()).share(), to = slice.place(range.stretch(), range.toU()).share();
            parts.add(new Run(Math.min(from, to), Math.max(from, to), range, range));
        }
        parts.sort(Comparator.comparingDouble(Run::low));
        List<Run> joined = new ArrayList<>();
        for (Run part : parts)
            if (!joined.isEmpty() && part.low() - joined.getLast().high() <= SAME)
                joined.set(joined.size() - 1, new Run(joined.getLast().low(), part.high(), joined.getLast().first(), part.last()));
            else
                joined.add(part);
        joined.removeIf(run -> run.high() - run.low() < SLIVER);
        return joined;
    }
}
