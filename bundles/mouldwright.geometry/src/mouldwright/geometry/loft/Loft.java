package mouldwright.geometry.loft;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.section.Mark;
import mouldwright.geometry.section.SectionKind;

/** A body lofted through stations: through equal shares of matching stretches a cubic spline runs along the body. */
public final class Loft {
    private final SectionKind kind;
    private final UGrid grid;
    private final List<Segment> segments;
    private final List<Mark> marks;
    private final List<Double> stations;
    private final boolean[][] bare;                 // span between stations, stretch

    Loft(SectionKind kind, UGrid grid, List<Segment> segments, List<Mark> marks, List<Double> stations, boolean[][] bare) {
        this.kind = kind;
        this.grid = grid;
        this.segments = segments;
        this.marks = List.copyOf(marks);
        this.stations = List.copyOf(stations);
        this.bare = bare;
    }

    /** Lofts a body.
     *  @param stations those that shape the body, x increasing
     *  @return the body, or why there is none; never an exception, whatever the figures */
    public static LoftResult through(List<LoftStation> stations) {
        return new Lofting(stations).result();
    }

    /** Half or full. */
    public SectionKind kind() { return kind; }

    /** Forward end, metres aft of the datum. */
    public double startX() { return stations.getFirst(); }

    /** After end, metres aft of the datum. */
    public double endX() { return stations.getLast(); }

    /** Where the shaping stations stand, metres aft of the datum, increasing. */
    public List<Double> stations() { return stations; }

    /** Stations inside the body at which it is creased, metres aft of the datum, increasing. */
    public List<Double> creases() {
        return segments.subList(1, segments.size()).stream().map(Segment::startX).toList();
    }

    /** How many stretches the outline has at every x. */
    public int stretches() { return marks.size() - 1; }

    /** What borders the stretches: mark i lies before stretch i, the last one after the last stretch. */
    public List<Mark> marks() { return marks; }

    /** Number of spans between neighbouring stations. */
    public int spans() { return bare.length; }

    /** Whether a stretch is bare at an x because its sections mark it so; at a station what holds aft of it. */
    public boolean isBare(int stretch, double x) {
        return isBare(stretch, spanAt(x, Side.AFT));
    }

    boolean isBare(int stretch, int span) { return bare[span][stretch]; }

    int spanAt(double x, Side side) {
        int span = 0;
        while (span + 1 < spans() && (side == Side.FORWARD ? x > stations.get(span + 1) : x >= stations.get(span + 1)))
            span++;
        return span;
    }

    /** The section of the body at an x, seen from its after side where the body is creased there.
     *  @param x metres aft; a place past an end is taken at the end */
    public Slice at(double x) {
        return at(x, Side.AFT);
    }

    /** The same, with the side from which a crease is seen. */
    public Slice at(double x, Side side) {
        if (Double.isNaN(x))
            throw new IllegalArgumentException("x of a section is not a number");
        double inside = Math.clamp(x, startX(), endX());
        int span = spanAt(inside, side);
        Segment segment = segment(span);
        int local = span - firstSpan(span);
        return slice(span, segment, segment.parameter(local, segment.share(local, inside)), inside, side);
    }

    /** The section inside a span between two stations by the share of the loft's own parameter, for quadrature.
     *  @param span  from 0 to spans - 1
     *  @param share 0 at the forward station to 1 at the after one */
    public Slice inSpan(int span, double share) {
        Segment segment = segment(span);
        double v = segment.parameter(span - firstSpan(span), share);
        return slice(span, segment, v, segment.x(v), share == 1 ? Side.FORWARD : Side.AFT);
    }

    /** The share of the loft's own parameter at an x inside a span. */
    public double shareInSpan(int span, double x) {
        return segment(span).share(span - firstSpan(span), x);
    }

    /** Length of a span in the loft's own parameter. */
    public double parameterLength(int span) {
        Segment segment = segment(span);
        int local = span - firstSpan(span);
        return segment.parameter(local, 1) - segment.parameter(local, 0);
    }

    /** The loft's own parameter at an x: the mean chord length from the forward end, or where sections wander, x itself. */
    public double parameter(double x) {
        double inside = Math.clamp(x, startX(), endX()), sum = 0;
        int at = spanAt(inside, Side.AFT);
        for (int span = 0; span < at; span++)
            sum += parameterLength(span);
        return sum + parameterLength(at) * shareInSpan(at, inside);
    }

    /** A point of the surface, creases seen from their after side; cheaper than cutting the whole section.
     *  @param x       metres aft; a place past an end is taken at the end
     *  @param stretch from 0 @param u share of the stretch, 0 to 1 */
    public SurfacePoint point(double x, int stretch, double u) {
        double inside = Math.clamp(x, startX(), endX());
        int span = spanAt(inside, Side.AFT);
        Segment segment = segment(span);
        int local = span - firstSpan(span), column = grid.below(u);
        double v = segment.parameter(local, segment.share(local, inside));
        if (segment.wayIn(v) != 0)
            return at(x).point(stretch, u);
        double[] value = new double[2 * Sampling.FIGURES], slope = new double[2 * Sampling.FIGURES];
        segment.columns().at(local, v, (stretch * grid.columns() + column) * Sampling.FIGURES, value.length, value, slope);
        double h = grid.u(column + 1) - grid.u(column);
        return SliceRows.point(inside, segment.slope(v), value, slope, h, (u - grid.u(column)) / h);
    }

    private Slice slice(int span, Segment segment, double v, double x, Side side) {
        int length = stretches() * grid.columns() * Sampling.FIGURES;
        double[] value = new double[length], slope = new double[length];
        segment.columns().at(span - firstSpan(span), v, value, slope);
        return new Slice(this, new SliceRows(grid, value, slope, segment.slope(v), segment.wayIn(v)), x, side, span);
    }

    private Segment segment(int span) {
        int left = span;
        for (Segment segment : segments) {
            if (left < segment.spans())
                return segment;
            left -= segment.spans();
        }
        throw new IndexOutOfBoundsException(span);
    }

    /** The first span of the segment a span belongs to. */
    private int firstSpan(int span) {
        int first = 0;
        for (Segment segment : segments) {
            if (span < first + segment.spans())
                return first;
            first += segment.spans();
        }
        throw new IndexOutOfBoundsException(span);
    }

    /** The body times a factor about x = y = z = 0. @param factor positive */
    public Loft scaled(double factor) {
        if (!(factor > 0) || Double.isInfinite(factor))
            throw new IllegalArgumentException("scale factor " + factor);
        List<Segment> scaled = new ArrayList<>();
        for (Segment segment : segments)
            scaled.add(segment.scaled(factor));
        return new Loft(kind, grid, scaled, marks, stations.stream().map(x -> x * factor).toList(), bare);
    }
}
