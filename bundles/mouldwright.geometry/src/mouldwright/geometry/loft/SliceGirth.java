package mouldwright.geometry.loft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.curve.Kronrod;
import mouldwright.geometry.section.Mark;
import mouldwright.geometry.section.SectionKind;

/** Lengths round the outline of a slice, and the places of shares of the half girth. */
final class SliceGirth {
    /** Parts of a stretch shorter than this share of it come from rounding. */
    private static final double CRUMB = 1e-9;

    private final SectionKind kind;
    private final SliceRows rows;
    private final List<Mark> marks;
    private final int cells;
    private final double[][] borders;               // stretch, cell border: length from the stretch's start
    private final double[] starts;                  // stretch: length from bottom centre, closure counted
    private final double bottom;
    private final double top;

    SliceGirth(SectionKind kind, SliceRows rows, List<Mark> marks) {
        this.kind = kind;
        this.rows = rows;
        this.marks = marks;
        cells = rows.grid().cells();
        int stretches = marks.size() - 1;
        borders = new double[stretches][cells + 1];
        starts = new double[stretches + 1];
        bottom = closure(rows.index(0, 0));
        top = closure(rows.index(stretches - 1, rows.grid().columns() - 1));
        starts[0] = bottom;
        for (int s = 0; s < stretches; s++) {
            for (int c = 0; c < cells; c++)
                borders[s][c + 1] = borders[s][c] + cellLength(s, c);
            starts[s + 1] = starts[s] + borders[s][cells];
        }
    }

    private double closure(int index) {
        if (kind == SectionKind.FULL)
            return 0;
        double y = rows.isPoint() ? Math.abs(rows.yv(index)) : rows.y(index);
        return Math.max(0, y);
    }

    private double cellLength(int stretch, int cell) {
        double sum = 0;
        for (int k = 0; k < Kronrod.SIZE; k++)
            sum += Kronrod.high(k) * rows.speed(rows.index(stretch, cell * UGrid.PER_CELL + 1 + k));
        return sum / cells;
    }

    double bottomClosure() { return rows.isPoint() ? 0 : bottom; }

    double topClosure() { return rows.isPoint() ? 0 : top; }

    /** From bottom centre once round (full) or to top centre (half), closures counted. */
    private double run() {
        return starts[starts.length - 1] + top;
    }

    double halfGirth() {
        return kind == SectionKind.FULL ? run() / 2 : run();
    }

    double girth() {
        return rows.isPoint() ? 0 : 2 * halfGirth();
    }

    /** Length from bottom centre round the starboard side to a place. */
    double lengthTo(int stretch, double u) {
        int cell = Math.clamp((int) (u * cells), 0, cells - 1);
        return starts[stretch] + borders[stretch][cell] + inCell(stretch, cell, u * cells - cell);
    }

    private double inCell(int stretch, int cell, double w) {
        double length = borders[stretch][cell + 1] - borders[stretch][cell];
        double before = rows.speed(rows.index(stretch, cell * UGrid.PER_CELL)) / cells;
        double after = rows.speed(rows.index(stretch, (cell + 1) * UGrid.PER_CELL)) / cells;
        double m = 1 - w;
        return w * w * (3 - 2 * w) * length + w * m * (m * before - w * after);
    }

    double share(double length) {
        double half = halfGirth();
        return length <= half || kind == SectionKind.HALF ? length / half : (2 * half - length) / half;
    }

    boolean port(double length) {
        return kind == SectionKind.FULL && length > halfGirth();
    }

    private double length(double share, boolean port) {
        return port && kind == SectionKind.FULL ? (2 - share) * halfGirth() : share * halfGirth();
    }

    SurfacePlace place(double x, double share, boolean port) {
        double length = length(share, port);
        int stretch = 0;
        while (stretch + 2 < starts.length && length > starts[stretch + 1])
            stretch++;
        double u = u(stretch, length);
        double there = lengthTo(stretch, u);
        return new SurfacePlace(x, stretch, u, share(there), port(there));
    }

    /** Share of a stretch at a length from bottom centre, held within the stretch. */
    private double u(int stretch, double length) {
        double wanted = length - starts[stretch];
        if (wanted <= 0)
            return 0;
        if (wanted >= borders[stretch][cells])
            return 1;
        int cell = 0;
        while (cell + 1 < cells && wanted > borders[stretch][cell + 1])
            cell++;
        double low = 0, high = 1, rest = wanted - borders[stretch][cell];
        double w = rest / (borders[stretch][cell + 1] - borders[stretch][cell]);
        for (int round = 0; round < 60; round++) {          // lengths rise with w, so bisection keeps a step on its way
            double miss = inCell(stretch, cell, w) - rest;
            if (miss > 0)
                high = w;
            else
                low = w;
            double speed = rows.speed(rows.index(stretch, cell * UGrid.PER_CELL + 4)) / cells;
            double next = w - miss / speed;
            if (Math.abs(next - w) < 1e-14)
                break;
            w = next > low && next < high ? next : 0.5 * (low + high);
        }
        return (cell + w) / cells;
    }

    /** Shares at which a line lies. On a full body its first mark counts to starboard and its second to port; one mark alone
     *  counts for both. */
    Optional<Double> line(String name, boolean port) {
        List<Double> lengths = new ArrayList<>();
        for (int border = 0; border < marks.size(); border++)
            if (marks.get(border).line().filter(name::equals).isPresent())
                lengths.add(starts[border]);
        if (lengths.isEmpty())
            return Optional.empty();
        for (double length : lengths)
            if (port(length) == port)
                return Optional.of(share(length));
        return Optional.of(share(lengths.getFirst()));
    }

    /** The parts of stretches inside an interval of shares on one side. */
    List<GirthRange> ranges(ShareSet.Interval interval, boolean port) {
        boolean back = port && kind == SectionKind.FULL;        // to port the outline runs down, from top to bottom centre
        double from = length(back ? interval.high() : interval.low(), port);
        double to = length(back ? interval.low() : interval.high(), port);
        List<GirthRange> ranges = new ArrayList<>();
        for (int s = 0; s + 1 < starts.length; s++) {
            double a = u(s, from), b = u(s, to);
            if (a < CRUMB)
                a = 0;
            if (b > 1 - CRUMB)
                b = 1;
            if (b - a > CRUMB && to > starts[s] && from < starts[s + 1])
                ranges.add(new GirthRange(s, a, b));
        }
        return ranges;
    }

    /** How much of the closures of one side lies inside an interval of shares. */
    double closureWithin(ShareSet.Interval interval) {
        double half = halfGirth();
        if (kind == SectionKind.FULL || rows.isPoint())
            return 0;
        double low = interval.low() * half, high = interval.high() * half;
        double first = Math.max(0, Math.min(high, bottom) - low);
        double last = Math.max(0, high - Math.max(low, half - top));
        return first + last;
    }
}
