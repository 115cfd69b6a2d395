package mouldwright.geometry.loft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.curve.Kronrod;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.section.SectionKind;

/** The section of a lofted body at one x. Figures of whole outlines count both sides and closures. */
public final class Slice {
    private final Loft loft;
    private final SliceRows rows;
    private final double x;
    private final Side side;
    private final int span;
    private SliceGirth girth;

    Slice(Loft loft, SliceRows rows, double x, Side side, int span) {
        this.loft = loft;
        this.rows = rows;
        this.x = x;
        this.side = side;
        this.span = span;
    }

    /** Worked out when first asked for: many sections are cut for a few points alone. */
    private SliceGirth measured() {
        if (girth == null)
            girth = new SliceGirth(loft.kind(), rows, loft.marks());
        return girth;
    }

    /** Metres aft of the datum. */
    public double x() { return x; }

    /** From which side a crease is seen. */
    public Side side() { return side; }

    /** The body this is a section of. */
    public Loft loft() { return loft; }

    /** How many stretches the outline has. */
    public int stretches() { return loft.stretches(); }

    /** dx by the loft's own parameter, metres per metre. */
    public double xRate() { return rows.xv(); }

    /** A point of the surface. @param stretch from 0 @param u share of the stretch, 0 to 1 */
    public SurfacePoint point(int stretch, double u) {
        return rows.point(x, stretch, u);
    }

    /** A place with its share of the measured(). @param stretch from 0 @param u share of the stretch, 0 to 1 */
    public SurfacePlace place(int stretch, double u) {
        double length = measured().lengthTo(stretch, u);
        return new SurfacePlace(x, stretch, u, measured().share(length), measured().port(length));
    }

    /** The place at a share of the half measured(). A place on a closure is taken at the end of the nearest stretch.
     *  @param share 0 at bottom centre to 1 at top centre
     *  @param port  on the port side; no matter for a half body */
    public SurfacePlace placeAtShare(double share, boolean port) {
        return measured().place(x, share, port);
    }

    /** Share of the half girth at which a place of the girth lies, 0 to 1; empty if no such line is known.
     *  @param place which
     *  @param port  on the port side; no matter for a half body */
    public Optional<Double> share(GirthPlace place, boolean port) {
        return switch (place) {
            case GirthPlace.AtShare at -> Optional.of(Math.clamp(at.share(), 0.0, 1.0));
            case GirthPlace.OnLine on -> measured().line(on.name(), port);
            case GirthPlace.Broadest broadest -> Optional.of(new SliceExtremes(this).broadest(port));
        };
    }

    /** The shares of a band on one side; nothing if one of its lines is not known. */
    public ShareSet shares(GirthBand band, boolean port) {
        Optional<Double> from = share(band.from(), port), to = share(band.to(), port);
        return from.isPresent() && to.isPresent() ? ShareSet.between(from.get(), to.get()) : ShareSet.NOTHING;
    }

    /** The shares of one side that lie to starboard of the lowest and highest place: on a full body that is not alike on both sides
     *  these places lie off bottom and top centre, which are half the girth apart. */
    public ShareSet starboardShares(boolean port) {
        SurfacePlace low = lowest(), high = highest();
        if (!port)
            return ShareSet.between(low.port() ? 0 : low.share(), high.port() ? 1 : high.share());
        return ShareSet.between(0, low.port() ? low.share() : 0).union(ShareSet.between(high.port() ? high.share() : 1, 1));
    }

    /** The lowest place, of several the nearest to bottom centre. */
    public SurfacePlace lowest() { return new SliceExtremes(this).lowest(); }

    /** The highest place, of several the nearest to top centre. */
    public SurfacePlace highest() { return new SliceExtremes(this).highest(); }

    /** The shares of bare bands on one side; bare stretches are not among them. */
    public ShareSet bareShares(Bare bare, boolean port) {
        ShareSet all = ShareSet.NOTHING;
        for (GirthBand band : bare.bands())
            all = all.union(shares(band, port));
        return all;
    }

    /** The parts of stretches within some shares of one side, in the order of the outline within each interval. */
    public List<GirthRange> ranges(ShareSet shares, boolean port) {
        List<GirthRange> ranges = new ArrayList<>();
        for (ShareSet.Interval interval : shares.intervals())
            ranges.addAll(measured().ranges(interval, port));
        return ranges;
    }

    /** Length of closure within some shares, one side, metres. */
    public double closureWithin(ShareSet shares) {
        return shares.intervals().stream().mapToDouble(measured()::closureWithin).sum();
    }

    /** Length of the whole outline, metres. */
    public double girth() { return measured().girth(); }

    /** Area, square metres. */
    public double area() { return Math.max(0, sides() * moment(0)); }

    /** Centroid of the area; where there is none the first place of the outline. */
    public PlanePoint centroid() {
        double area = sides() * moment(0);
        if (isDegenerate())
            return new PlanePoint(rows.y(0), rows.z(0));
        return new PlanePoint(loft.kind() == SectionKind.HALF ? 0 : moment(1) / area, sides() * moment(2) / area);
    }

    private int sides() {
        return loft.kind() == SectionKind.HALF ? 2 : 1;
    }

    /** Green's formula round the stretches; closures are level and add nothing.
     *  @param which 0 for the area, 1 for its moment in breadth, 2 for its moment in height, of what is given */
    private double moment(int which) {
        if (rows.isPoint())
            return 0;
        double sum = 0;
        UGrid grid = rows.grid();
        for (int s = 0; s < stretches(); s++)
            for (int c = 0; c < grid.cells(); c++)
                for (int k = 0; k < Kronrod.SIZE; k++) {
                    int i = rows.index(s, c * UGrid.PER_CELL + 1 + k);
                    double y = rows.y(i);
                    double f = which == 0 ? y : which == 1 ? y * y / 2 : y * rows.z(i);
                    sum += Kronrod.high(k) * f * rows.zu(i);
                }
        return sum / grid.cells();
    }

    /** Length of the closure at bottom centre, one side, metres. */
    public double bottomClosure() { return measured().bottomClosure(); }

    /** Length of the closure at top centre, one side, metres. */
    public double topClosure() { return measured().topClosure(); }

    /** Whether there is no area: at a pointed or knife-edged end. */
    public boolean isDegenerate() {
        double girth = girth();
        return girth == 0 || area() <= 1e-9 * girth * girth;
    }

    /** Whether a stretch is bare here because its sections mark it so. */
    public boolean isBare(int stretch) {
        return loft.isBare(stretch, span);
    }

    /** Whether a place of the surface is bare. */
    public boolean isBare(SurfacePlace place, Bare bare) {
        return isBare(place.stretch()) || bareShares(bare, place.port()).contains(place.share());
    }

    /** Integral over a part of a stretch of a figure times the surface per u and per the loft's own parameter: a span's area
     *  is the integral of this over its parameter. One side of a half body.
     *  @param figure evaluated to starboard on a half body */
    public TwoOrders integral(GirthRange range, SurfaceFunction figure) {
        return SliceIntegral.of(this, rows, range, figure);
    }

    /** The same for the surface itself. */
    public TwoOrders integral(GirthRange range) {
        return SliceIntegral.of(rows, range);
    }

    /** The same for the height above the base times the surface: its moment about the base. */
    public TwoOrders heights(GirthRange range) {
        return SliceIntegral.heights(rows, range);
    }

    /** Shares of a stretch between which chords follow it, both ends of the range among them.
     *  @param tolerance how far the curve may leave its chords, metres, positive */
    public double[] chords(GirthRange range, double tolerance) {
        return new SliceChords(rows, tolerance).places(range);
    }

    /** The whole outline as straight pieces, counter-clockwise seen from aft.
     *  @param tolerance how far the curve may leave its chords, metres, positive */
    public Outline outline(double tolerance) {
        List<PlanePoint> points = new ArrayList<>();
        double[] p = new double[7];
        for (int s = 0; s < stretches(); s++)
            for (double u : chords(new GirthRange(s, 0, 1), tolerance)) {
                rows.at(s, u, p);
                points.add(new PlanePoint(p[0], p[1]));
            }
        if (loft.kind() == SectionKind.HALF)
            for (int i = points.size() - 1; i >= 0; i--)
                points.add(new PlanePoint(-points.get(i).y(), points.get(i).z()));
        return Outline.of(points);
    }
}
