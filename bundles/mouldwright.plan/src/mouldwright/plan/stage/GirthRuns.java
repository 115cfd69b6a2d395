package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.section.SectionKind;

/** The moulded runs of a section's outline within a band, both sides, each joined over the centreline where nothing bare
 *  parts it: what pieces of mat lie across.
 *  @param lengths of the runs, m
 *  @param closed  whether one run goes all round */
public record GirthRuns(List<Double> lengths, boolean closed) {

    /** Shares of the girth nearer than this are one place: far below what a brush could tell apart. */
    private static final double SAME = 1e-9;

    /** Copies its list. */
    public GirthRuns {
        lengths = List.copyOf(lengths);
    }

    /** @return all runs together, m */
    public double total() {
        return lengths.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** The runs of a section.
     *  @param bare what is not moulded
     *  @param band of the girth */
    static GirthRuns of(Slice slice, Bare bare, GirthBand band) {
        boolean half = slice.loft().kind() == SectionKind.HALF;
        List<double[]> ring = new ArrayList<>(side(slice, bare, band, false));
        for (double[] run : half ? List.copyOf(ring) : side(slice, bare, band, true))
            ring.add(new double[] {2 - run[1], 2 - run[0]});
        return joined(ring, slice.girth() / 2);
    }

    /** Moulded runs of one side, as shares of the half girth from bottom centre. */
    private static List<double[]> side(Slice slice, Bare bare, GirthBand band, boolean port) {
        double from = share(slice, band.from(), port, 0);
        double to = share(slice, band.to(), port, 1);
        double half = slice.girth() / 2;
        double low = Math.max(Math.min(from, to), slice.bottomClosure() / half);
        double high = Math.min(Math.max(from, to), 1 - slice.topClosure() / half);
        TreeSet<Double> edges = new TreeSet<>(List.of(low, high));
        for (GirthBand one : bare.bands()) {
            edges.add(share(slice, one.from(), port, 0));
            edges.add(share(slice, one.to(), port, 1));
        }
        for (int stretch = 0; stretch < slice.loft().stretches(); stretch++) {
            edges.add(slice.place(stretch, 0).share());
            edges.add(slice.place(stretch, 1).share());
        }
        List<double[]> runs = new ArrayList<>();
        double before = low;
        for (double edge : edges.tailSet(low, false)) {
            double end = Math.min(edge, high);
            if (end - before > SAME && !slice.isBare(slice.placeAtShare((before + end) / 2, port), bare))
                runs.add(new double[] {before, end});
            before = Math.max(before, end);
        }
        return runs;
    }

    private static double share(Slice slice, GirthPlace place, boolean port, double otherwise) {
        return slice.share(place, port).orElse(otherwise);
    }

    /** Joins runs that touch, going round from bottom centre (0) over top centre (1) and back (2). */
    private static GirthRuns joined(List<double[]> ring, double half) {
        ring.sort((a, b) -> Double.compare(a[0], b[0]));
        List<double[]> runs = new ArrayList<>();
        for (double[] run : ring) {
            if (!runs.isEmpty() && run[0] - runs.getLast()[1] <= SAME)
                runs.getLast()[1] = run[1];
            else
                runs.add(run.clone());
        }
        boolean round = !runs.isEmpty() && runs.getFirst()[0] <= SAME && runs.getLast()[1] >= 2 - SAME;
        boolean closed = round && runs.size() == 1;
        if (round && !closed)
            runs.getFirst()[0] -= 2 - runs.removeLast()[0];
        return new GirthRuns(runs.stream().map(run -> (run[1] - run[0]) * half).toList(), closed);
    }

    /** Pieces laid side by side over all runs.
     *  @param width of the roll, m, more than the lap
     *  @param lap   m */
    int pieces(double width, double lap) {
        int pieces = 0;
        for (double length : lengths)
            pieces += (int) across(length, closed, width, lap);
        return pieces;
    }

    /** Pieces laid side by side over one run: n = ceil((G - l)/(W - l)); all round, the last laps the first. */
    static double across(double length, boolean closed, double width, double lap) {
        return Math.max(1, Math.ceil((length - (closed ? 0 : lap)) / (width - lap) - SAME));
    }

    /** Laps between pieces laid side by side.
     *  @param pieces as {@link #pieces} counts them */
    int laps(int pieces) {
        return closed ? pieces : pieces - lengths.size();
    }
}
