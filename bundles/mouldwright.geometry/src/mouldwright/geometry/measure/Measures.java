package mouldwright.geometry.measure;

import java.util.List;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthRange;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.ShareSet;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfaceFunction;
import mouldwright.geometry.loft.TwoOrders;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.section.SectionKind;

/** Measures of a lofted body by Gauss quadrature over its patches. A region past an end of the body is cut off there.
 *  Long work ends with a CancellationException once it is cancelled. */
public final class Measures {
    private final Loft loft;
    private final Bare bare;
    private final SpanRule rule;
    private Whole whole;

    private Measures(Loft loft, Bare bare, BooleanSupplier cancelled) {
        this.loft = loft;
        this.bare = bare;
        rule = new SpanRule(loft, cancelled);
    }

    /** Measures a body.
     *  @param loft      the body
     *  @param bare      what of it is bare
     *  @param cancelled asked per patch */
    public static Measures of(Loft loft, Bare bare, BooleanSupplier cancelled) {
        return new Measures(loft, bare, cancelled);
    }

    /** Volume of the whole body with its centroid. */
    public VolumeCentre volume() {
        return volume(loft.startX(), loft.endX());
    }

    /** Volume between two planes across the body, metres aft: the integral of the section area. */
    public VolumeCentre volume(double fromX, double toX) {
        double[] sums = new double[5];
        rule.visit(fromX, toX, (slice, high, low) -> {
            double area = slice.area();
            PlanePoint centre = slice.centroid();
            double volume = area * slice.xRate() * high;
            sums[0] += volume;
            sums[1] += area * slice.xRate() * low;
            sums[2] += volume * slice.x();
            sums[3] += volume * centre.y();
            sums[4] += volume * centre.z();
        });
        Measured volume = new Measured(sums[0], Math.abs(sums[0] - sums[1]));
        return sums[0] == 0 ? new VolumeCentre(volume, fromX, 0, 0)
                : new VolumeCentre(volume, sums[2] / sums[0], sums[3] / sums[0], sums[4] / sums[0]);
    }

    /** The whole body's surface, measured once however often it is asked for. */
    private record Whole(AreaSplit area, SurfaceCentre moulded) { }

    /** Lofted surface of the whole body, without end faces. */
    public AreaSplit area() {
        return whole().area();
    }

    /** Moulded surface of the whole body, without end faces, with its centroid. */
    public SurfaceCentre moulded() {
        return whole().moulded();
    }

    private Whole whole() {
        if (whole == null) {
            double[] moments = new double[2];
            AreaSplit area = area(new SurfaceRegion(loft.startX(), loft.endX(), GirthBand.WHOLE), (slice, range, surface, weight) -> {
                moments[0] += surface.high() * weight * slice.x();
                moments[1] += slice.heights(range).high() * weight;
            });
            double moulded = area.moulded().value();
            whole = new Whole(area, moulded > 0 ? new SurfaceCentre(area.moulded(), moments[0] / moulded, moments[1] / moulded)
                    : new SurfaceCentre(area.moulded(), loft.startX(), 0));
        }
        return whole;
    }

    /** Looks on while moulded surface is summed. */
    private interface Onlooker {
        /** @param surface per parameter of the loft @param weight of it, both sides counted */
        void see(Slice slice, GirthRange range, TwoOrders surface, double weight);
    }

    /** Lofted surface between two planes across the body, metres aft. */
    public AreaSplit area(double fromX, double toX) {
        return area(new SurfaceRegion(fromX, toX, GirthBand.WHOLE));
    }

    /** Lofted surface of a region, both sides; closures inside the band counted. */
    public AreaSplit area(SurfaceRegion region) {
        return area(region, (slice, range, surface, weight) -> { });
    }

    private AreaSplit area(SurfaceRegion region, Onlooker onlooker) {
        Sum moulded = new Sum(), exposed = new Sum(), closure = new Sum();
        rule.visit(region.fromX(), region.toX(), (slice, high, low) -> {
            for (boolean port : sides()) {
                ShareSet band = slice.shares(region.band(), port), none = slice.bareShares(bare, port);
                for (GirthRange range : slice.ranges(band.intersection(none.complement()), port)) {
                    TwoOrders surface = slice.integral(range);
                    boolean open = slice.isBare(range.stretch());
                    (open ? exposed : moulded).add(surface, high, low, factor());
                    if (!open)
                        onlooker.see(slice, range, surface, high * factor());
                }
                for (GirthRange range : slice.ranges(band.intersection(none), port))
                    exposed.add(slice.integral(range), high, low, factor());
                addClosure(closure, slice, band, high, low);
            }
        });
        return new AreaSplit(moulded.measured(), exposed.measured(), closure.measured());
    }

    /** Closures are level across the body, so what they span per length of body follows from the slope of their height. */
    private void addClosure(Sum closure, Slice slice, ShareSet band, double high, double low) {
        if (loft.kind() == SectionKind.FULL)
            return;
        double bottom = slice.closureWithin(band.intersection(ShareSet.between(0, 0.5)));
        double top = slice.closureWithin(band.intersection(ShareSet.between(0.5, 1)));
        double area = bottom * stretched(slice, 0, 0) + top * stretched(slice, slice.stretches() - 1, 1);
        closure.add(new TwoOrders(area, area), high, low, 2);
    }

    private static double stretched(Slice slice, int stretch, double u) {
        double slope = slice.point(stretch, u).zx();
        return Double.isFinite(slope) ? slice.xRate() * Math.hypot(1, slope) : 0;
    }

    /** Integral of a figure over the moulded surface of a region, both sides (a half body is evaluated to starboard). */
    public Measured integral(SurfaceRegion region, SurfaceFunction figure) {
        Sum sum = new Sum();
        rule.visit(region.fromX(), region.toX(), (slice, high, low) -> {
            for (boolean port : sides()) {
                ShareSet moulded = slice.shares(region.band(), port)
                        .intersection(slice.bareShares(bare, port).complement());
                for (GirthRange range : slice.ranges(moulded, port))
                    if (!slice.isBare(range.stretch()))
                        sum.add(slice.integral(range, figure), high, low, factor());
            }
        });
        return sum.measured();
    }

    private List<Boolean> sides() {
        return loft.kind() == SectionKind.HALF ? List.of(false) : List.of(false, true);
    }

    private int factor() {
        return loft.kind() == SectionKind.HALF ? 2 : 1;
    }

    /** A sum in two orders. */
    private static final class Sum {
        private double high;
        private double low;

        void add(TwoOrders round, double highWeight, double lowWeight, double factor) {
            high += round.high() * highWeight * factor;
            low += round.low() * lowWeight * factor;
        }

        Measured measured() {
            return new Measured(high, Math.abs(high - low));
        }
    }
}
