package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.measure.Measured;
import mouldwright.geometry.measure.SurfaceRegion;

/** How many plies lie where, against how many are asked for: the exact union of the rules' regions of (x, u). The surface is
 *  cut into cells along the edges of all rules, lines along the body among them, and where edges cross; within a cell both
 *  counts are the same throughout. Sweeping from edge to edge takes n log n steps a span. */
final class Coverage {

    /** A part of the surface with a number of plies, laid or asked for.
     *  @param fromX on the plug, m
     *  @param toX   on the plug, m */
    record Patch(double fromX, double toX, GirthBand band, int plies) { }

    /** Shares of the girth nearer than this are one place. */
    private static final double SAME = 1e-9;
    /** Edges that cross are parted to within this share of the body's length: a thousandth of a millimetre of a metre. */
    private static final double FINEST = 1e-6;
    /** Where in a span the order of the edges is looked at. */
    private static final double[] LOOKS = {0.01, 0.25, 0.5, 0.75, 0.99};

    private final ShapeMeasures shape;
    private final BooleanSupplier cancelled;
    private final int everywhere;
    private final List<Patch> laid;
    private final List<Patch> asked;
    private final List<SkinMeasures.Gap> gaps = new ArrayList<>();
    private Measured uncovered = Measured.ZERO;
    private Measured lacking = Measured.ZERO;

    /** Counts.
     *  @param everywhere plies laid over the whole moulded face, which asks for one by itself */
    Coverage(ShapeMeasures shape, int everywhere, List<Patch> laid, List<Patch> asked, BooleanSupplier cancelled) {
        this.cancelled = cancelled;
        this.shape = shape;
        this.everywhere = everywhere;
        this.laid = laid;
        this.asked = asked;
        count();
    }

    Measured uncovered() {
        return uncovered;
    }

    Measured lacking() {
        return lacking;
    }

    List<SkinMeasures.Gap> gaps() {
        return gaps;
    }

    private void count() {
        List<Double> cuts = List.copyOf(cuts());
        for (int i = 1; i < cuts.size(); i++)
            span(cuts.get(i - 1), cuts.get(i));
        if (everywhere == 0)
            for (ShapeMeasures.End end : shape.moulded()) {
                double area = end.area() * shape.scale() * shape.scale();
                double x = end.station().x() * shape.scale();
                add(new SkinMeasures.Gap(x, x, GirthBand.WHOLE, 0, 1, area), new Measured(area, 0));
            }
    }

    private TreeSet<Double> cuts() {
        TreeSet<Double> cuts = new TreeSet<>(List.of(shape.plug().startX(), shape.plug().endX()));
        if (laid.isEmpty() && asked.isEmpty())
            return cuts;
        cuts.addAll(shape.plug().stations());
        for (Patch patch : all()) {
            cuts.add(Math.clamp(patch.fromX(), shape.plug().startX(), shape.plug().endX()));
            cuts.add(Math.clamp(patch.toX(), shape.plug().startX(), shape.plug().endX()));
        }
        return cuts;
    }

    private List<Patch> all() {
        List<Patch> all = new ArrayList<>(laid);
        all.addAll(asked);
        return all;
    }

    /** Cuts a span where edges cross, so that within each column they keep their order. */
    private void span(double from, double to) {
        if (cancelled.getAsBoolean())
            throw new CancellationException();
        List<Edge> edges = edges((from + to) / 2);
        if (to - from > FINEST * (shape.plug().endX() - shape.plug().startX()) && crossed(edges, from, to)) {
            span(from, (from + to) / 2);
            span((from + to) / 2, to);
        } else
            column(edges, from, to);
    }

    /** An edge of a rule, or of the face.
     *  @param share at the middle of the span */
    private record Edge(GirthPlace place, double share) { }

    private List<Edge> edges(double middle) {
        Slice slice = shape.plug().at(middle);
        List<GirthPlace> places = new ArrayList<>(List.of(GirthPlace.BOTTOM, GirthPlace.TOP));
        for (Patch patch : all())
            if (over(patch, middle)) {
                places.add(patch.band().from());
                places.add(patch.band().to());
            }
        return places.stream().distinct().map(place -> new Edge(place, share(slice, place))).sorted(Comparator.comparingDouble(Edge::share)).toList();
    }

    private boolean crossed(List<Edge> edges, double from, double to) {
        if (edges.stream().allMatch(edge -> edge.place() instanceof GirthPlace.AtShare))
            return false;
        for (double look : LOOKS) {
            Slice slice = shape.plug().at(from + look * (to - from));
            double before = 0;
            for (Edge edge : edges) {
                double share = share(slice, edge.place());
                if (share < before - SAME)
                    return true;
                before = Math.max(before, share);
            }
        }
        return false;
    }

    /** Goes round the girth from edge to edge, counting plies in and out as their bands begin and end. */
    private void column(List<Edge> edges, double from, double to) {
        Map<GirthPlace, Integer> rank = new HashMap<>();
        for (Edge edge : edges)
            rank.put(edge.place(), rank.size());
        int[] plies = new int[edges.size()];
        List<List<Integer>> begin = lists(edges.size());
        List<List<Integer>> end = lists(edges.size());
        for (Patch patch : laid)
            bounds(patch, rank, (from + to) / 2, (low, high) -> {
                plies[low] += patch.plies();
                plies[high] -= patch.plies();
            });
        for (Patch patch : asked)
            bounds(patch, rank, (from + to) / 2, (low, high) -> {
                begin.get(low).add(patch.plies());
                end.get(high).add(patch.plies());
            });
        int lying = everywhere;
        TreeMap<Integer, Integer> wanted = new TreeMap<>(Map.of(1, 1)); // the face asks for one ply by itself
        for (int i = 0; i + 1 < edges.size(); i++) {
            lying += plies[i];
            begin.get(i).forEach(count -> wanted.merge(count, 1, Integer::sum));
            end.get(i).forEach(count -> wanted.merge(count, -1, (a, b) -> a + b == 0 ? null : a + b));
            if (lying < wanted.lastKey() && edges.get(i + 1).share() > edges.get(i).share())
                lack(from, to, new GirthBand(edges.get(i).place(), edges.get(i + 1).place()), lying, wanted.lastKey());
        }
    }

    private static List<List<Integer>> lists(int size) {
        return Stream.generate(() -> (List<Integer>) new ArrayList<Integer>()).limit(size).toList();
    }

    /** What is done with the ranks of a band's edges. */
    private interface Ranks {
        void of(int low, int high);
    }

    private static void bounds(Patch patch, Map<GirthPlace, Integer> rank, double middle, Ranks ranks) {
        if (!over(patch, middle))
            return;
        int a = rank.get(patch.band().from());
        int b = rank.get(patch.band().to());
        ranks.of(Math.min(a, b), Math.max(a, b));
    }

    private void lack(double from, double to, GirthBand band, int lying, int wanted) {
        Measured area = shape.measures().area(new SurfaceRegion(from, to, band)).moulded();
        if (area.value() > 0)
            add(new SkinMeasures.Gap(from, to, band, lying, wanted, area.value()), area);
    }

    private void add(SkinMeasures.Gap gap, Measured area) {
        gaps.add(gap);
        lacking = lacking.plus(area);
        if (gap.laid() == 0)
            uncovered = uncovered.plus(area);
    }

    private static boolean over(Patch patch, double x) {
        return x > patch.fromX() && x < patch.toX();
    }

    /** A line that is not known there bounds nothing. */
    private static double share(Slice slice, GirthPlace place) {
        return slice.share(place, false).orElse(0.0);
    }
}
