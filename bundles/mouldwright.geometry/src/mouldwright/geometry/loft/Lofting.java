package mouldwright.geometry.loft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.section.Mark;
import mouldwright.geometry.section.Section;
import mouldwright.geometry.section.SectionShape;
import mouldwright.geometry.section.Stretch;

/** Builds a loft, or says why not. */
final class Lofting {
    /** A station beyond this is a slip, not a plug; metres. */
    private static final double FARTHEST = 1e6;
    /** Stations nearer than this stand at one place, metres: a thousandth of a millimetre. */
    private static final double CLOSEST = 1e-6;

    private final List<LoftStation> stations;
    private final List<LoftFault> faults = new ArrayList<>();

    Lofting(List<LoftStation> stations) {
        this.stations = stations;
    }

    LoftResult result() {
        inspectPlaces();
        if (faults.isEmpty())
            inspectSections();
        return new LoftResult(faults.isEmpty() ? Optional.of(build()) : Optional.empty(), faults);
    }

    private void inspectPlaces() {
        if (stations.size() < 2)
            faults.add(new LoftFault.TooFewStations(stations.size()));
        for (int i = 0; i < stations.size(); i++)
            if (!(Math.abs(stations.get(i).x()) <= FARTHEST))
                faults.add(new LoftFault.NotFinite(i));
        for (int i = 0; i + 1 < stations.size(); i++) {
            double a = stations.get(i).x(), b = stations.get(i + 1).x();
            if (Math.abs(a - b) < CLOSEST)
                faults.add(new LoftFault.Together(i, i + 1));
            else if (a > b)
                faults.add(new LoftFault.OutOfOrder(i, i + 1));
        }
    }

    private void inspectSections() {
        boolean body = false;
        for (int i = 0; i < stations.size(); i++) {
            boolean pinched = pinched(i);
            body |= !pinched;
            if (pinched && i > 0 && i + 1 < stations.size())
                faults.add(new LoftFault.PinchedInside(i));
        }
        if (!body) {
            faults.clear();
            faults.add(new LoftFault.NoBody());
        }
        for (int i = 0; i + 1 < stations.size(); i++)
            Matching.fault(i, section(i), i + 1, section(i + 1)).ifPresent(faults::add);
    }

    private Section section(int i) {
        return stations.get(i).section();
    }

    private boolean pinched(int i) {
        return section(i).shape() != SectionShape.BODY;
    }

    private Loft build() {
        int n = stations.size();
        int first = pinched(0) ? 1 : 0, last = pinched(n - 1) ? n - 2 : n - 1;
        Section pattern = section(first);
        UGrid grid = UGrid.forStretches(pattern.stretches().size());
        double[][] rows = new double[n][], lengths = new double[n][];
        for (int i = 0; i < n; i++) {
            Section neighbour = section(Math.clamp(i, first, last));
            rows[i] = pinched(i) ? Sampling.row(section(i), neighbour, grid) : Sampling.row(section(i), grid);
            lengths[i] = neighbour.stretches().stream().mapToDouble(Stretch::length).toArray();
        }
        List<Segment> segments = new ArrayList<>();
        int from = 0;
        for (int i = 1; i < n; i++)
            if (i == n - 1 || stations.get(i).crease()) {
                segments.add(segment(from, i, rows, lengths, grid));
                from = i;
            }
        List<Double> xs = stations.stream().map(LoftStation::x).toList();
        return new Loft(pattern.kind(), grid, segments, marks(first, last), xs, bare(first, last));
    }

    private Segment segment(int from, int to, double[][] rows, double[][] lengths, UGrid grid) {
        int n = to - from + 1;
        double[] xs = new double[n];
        double[][] part = new double[n][], partLengths = new double[n][];
        for (int i = 0; i < n; i++) {
            xs[i] = stations.get(from + i).x();
            part[i] = rows[from + i];
            partLengths[i] = lengths[from + i];
        }
        return Segment.through(xs, part, partLengths, grid, pinched(from), pinched(to));
    }

    /** A border is a knuckle where any section makes it one; its line may be named at its ends by any section. */
    private List<Mark> marks(int first, int last) {
        List<Mark> marks = new ArrayList<>();
        for (int border = 0; border <= section(first).stretches().size(); border++) {
            Optional<String> line = Optional.empty();
            boolean knuckle = false;
            for (int i = first; i <= last; i++) {
                Mark mark = mark(section(i), border);
                line = line.or(mark::line);
                knuckle |= mark.knuckle();
            }
            marks.add(new Mark(line, knuckle));
        }
        return marks;
    }

    private static Mark mark(Section section, int border) {
        return border == 0 ? section.stretches().getFirst().from() : section.stretches().get(border - 1).to();
    }

    private boolean[][] bare(int first, int last) {
        int stretches = section(first).stretches().size();
        boolean[][] bare = new boolean[stations.size() - 1][stretches];
        for (int span = 0; span < bare.length; span++) {
            Section fore = section(Math.clamp(span, first, last)), aft = section(Math.clamp(span + 1, first, last));
            for (int s = 0; s < stretches; s++)
                bare[span][s] = fore.stretches().get(s).bare() && aft.stretches().get(s).bare();
        }
        return bare;
    }
}
