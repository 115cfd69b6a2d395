package mouldwright.geometry.offset;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.loft.GirthRange;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.ShareSet;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.section.SectionKind;

/** The outline of a section as strips with their build-up. In the section plane the build-up measures t / sqrt(1 - n_x^2), exact
 *  on a cone. Where the surface is steeper than 60 degrees to the centreline the offset surface itself is cut instead: the places
 *  of neighbouring sections whose offset comes to lie in the plane, by how far they lie inward. */
final class SkinStrips {
    private static final double STEEP = Math.sin(Math.toRadians(60));
    /** At 60 degrees; it serves beyond them too where there is no build-up to compare. */
    private static final double STEEP_RATE = 2;
    /** How much thinner a build-up is taken where its rate in the section plane is found by comparing. */
    private static final double THINNER = 1e-3;

    private final Slice slice;
    private final BuildUp buildUp;
    private final double chord;

    /** @param chord how far chords may leave the outline, metres */
    SkinStrips(Slice slice, BuildUp buildUp, double chord) {
        this.slice = slice;
        this.buildUp = buildUp;
        this.chord = chord;
    }

    /** All of them in order round the outline, counter-clockwise; closures shorter than a chord's leeway are left out. */
    List<Strip> strips() {
        List<Strip> starboard = side(false);
        if (slice.loft().kind() == SectionKind.FULL) {
            starboard.addAll(side(true));
            return starboard;
        }
        List<Strip> all = new ArrayList<>();
        double bottom = slice.bottomClosure(), top = slice.topClosure();
        if (bottom > chord)
            all.add(Strip.level(-bottom, bottom, slice.point(0, 0).z()));
        all.addAll(starboard);
        if (top > chord)
            all.add(Strip.level(top, -top, slice.point(slice.stretches() - 1, 1).z()));
        for (int i = starboard.size() - 1; i >= 0; i--)
            all.add(starboard.get(i).mirrored());
        return all;
    }

    private List<Strip> side(boolean port) {
        LayerMap layers = new LayerMap(slice, buildUp, port);
        List<ShareSet.Interval> intervals = layers.intervals();
        List<Strip> strips = new ArrayList<>();
        for (ShareSet.Interval interval : port ? intervals.reversed() : intervals) {
            double middle = 0.5 * (interval.low() + interval.high());
            for (GirthRange range : slice.ranges(new ShareSet(List.of(interval)), port)) {
                boolean bare = layers.isBare(middle) || slice.isBare(range.stretch());
                strips.add(strip(range, bare ? 0 : layers.thickness(middle), bare));
            }
        }
        return strips;
    }

    private Strip strip(GirthRange range, double thickness, boolean bare) {
        double[] us = slice.chords(range, chord);
        int n = us.length;
        double[] y = new double[n], z = new double[n], ty = new double[n], tz = new double[n], in = new double[n], rate = new double[n];
        for (int i = 0; i < n; i++) {
            SurfacePoint p = slice.point(range.stretch(), us[i]);
            double length = Math.sqrt(p.yu() * p.yu() + p.zu() * p.zu());
            y[i] = p.y();
            z[i] = p.z();
            ty[i] = length == 0 ? 0 : p.yu() / length;
            tz[i] = length == 0 ? 0 : p.zu() / length;
            if (bare)
                continue;
            boolean steep = Math.abs(p.nx()) > STEEP;
            rate[i] = steep ? STEEP_RATE : 1 / Math.sqrt(1 - p.nx() * p.nx());
            in[i] = thickness * rate[i];
            if (steep && thickness > 0) {
                in[i] = inPlane(range.stretch(), us[i], p, thickness);
                rate[i] = (in[i] - inPlane(range.stretch(), us[i], p, thickness * (1 - THINNER))) / (thickness * THINNER);
            }
        }
        return new Strip(y, z, ty, tz, in, rate, thickness, bare);
    }

    /** How far inward the offset surface cuts the plane at one share: the place of a neighbouring section whose offset lies in
     *  the plane, x - t n_x(x) = x of the plane, found by bisection between a thickness forward and a thickness aft as far as
     *  the body reaches. What it is shifted along the outline is left out, so that runs neither fold nor leave gaps. */
    private double inPlane(int stretch, double u, SurfacePoint here, double thickness) {
        Loft loft = slice.loft();
        double low = Math.max(loft.startX(), slice.x() - thickness), high = Math.min(loft.endX(), slice.x() + thickness);
        SurfacePoint at = here;
        for (int round = 0; round < 40; round++) {
            double x = 0.5 * (low + high);
            at = loft.point(x, stretch, u);
            if (x - thickness * at.nx() < slice.x())
                low = x;
            else
                high = x;
        }
        double length = Math.sqrt(here.yu() * here.yu() + here.zu() * here.zu());
        double dy = here.y() - (at.y() - thickness * at.ny()), dz = here.z() - (at.z() - thickness * at.nz());
        return length == 0 ? 0 : (dy * here.zu() - dz * here.yu()) / length;
    }
}
