package mouldwright.geometry.offset;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.loft.GirthRange;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.ShareSet;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.section.SectionKind;

/** The outline of a section as runs moved in by the build-up and further in or out. In the section plane the build-up measures
 *  t / sqrt(1 - n_x^2), exact on a cone. Where the surface is steeper than 60 degrees to the centreline the offset surface
 *  itself is cut instead: the places of neighbouring sections whose offset comes to lie in the plane, by how far they lie inward. */
final class SkinRuns {
    private static final double STEEP = Math.sin(Math.toRadians(60));
    /** How far chords may leave the outline, as a share of the half girth. */
    private static final double CHORD = 1e-5;

    private final Slice slice;
    private final BuildUp buildUp;
    private final double growth;
    private final double depth;
    private final double tolerance;

    /** @param growth further outward where not bare @param depth further inward everywhere; metres in the section plane */
    SkinRuns(Slice slice, BuildUp buildUp, double growth, double depth) {
        this.slice = slice;
        this.buildUp = buildUp;
        this.growth = growth;
        this.depth = depth;
        tolerance = CHORD * slice.girth() / 2;
    }

    List<Run> runs() {
        List<Run> starboard = side(false);
        if (slice.loft().kind() == SectionKind.FULL) {
            starboard.addAll(side(true));
            return starboard;
        }
        List<Run> all = new ArrayList<>();
        double bottom = slice.bottomClosure(), top = slice.topClosure();
        if (bottom > tolerance)
            all.add(Run.level(-bottom, bottom, slice.point(0, 0).z(), -depth));
        all.addAll(starboard);
        if (top > tolerance)
            all.add(Run.level(top, -top, slice.point(slice.stretches() - 1, 1).z(), -depth));
        for (int i = starboard.size() - 1; i >= 0; i--)
            all.add(starboard.get(i).mirrored());
        return all;
    }

    private List<Run> side(boolean port) {
        LayerMap layers = new LayerMap(slice, buildUp, port);
        List<ShareSet.Interval> intervals = layers.intervals();
        List<Run> runs = new ArrayList<>();
        for (ShareSet.Interval interval : port ? intervals.reversed() : intervals) {
            double middle = 0.5 * (interval.low() + interval.high());
            for (GirthRange range : slice.ranges(new ShareSet(List.of(interval)), port)) {
                boolean bare = layers.isBare(middle) || slice.isBare(range.stretch());
                runs.add(run(range, bare ? 0 : layers.thickness(middle), (bare ? 0 : growth) - depth));
            }
        }
        return runs;
    }

    private Run run(GirthRange range, double thickness, double further) {
        double[] us = slice.chords(range, tolerance);
        int n = us.length;
        double[] y = new double[n], z = new double[n], ty = new double[n], tz = new double[n], my = new double[n],
                mz = new double[n];
        double firstOut = 0, lastOut = 0;
        for (int i = 0; i < n; i++) {
            SurfacePoint p = slice.point(range.stretch(), us[i]);
            double length = Math.hypot(p.yu(), p.zu());
            y[i] = p.y();
            z[i] = p.z();
            ty[i] = length == 0 ? 0 : p.yu() / length;
            tz[i] = length == 0 ? 0 : p.zu() / length;
            double inPlane = Math.sqrt(Math.max(0, 1 - p.nx() * p.nx()));
            double in = thickness == 0 ? 0
                    : Math.abs(p.nx()) > STEEP ? inPlane(range.stretch(), us[i], p, thickness) : thickness / inPlane;
            double out = further - in;
            my[i] = p.y() + out * tz[i];
            mz[i] = p.z() - out * ty[i];
            firstOut = i == 0 ? out : firstOut;
            lastOut = out;
        }
        return new Run(y, z, ty, tz, my, mz, firstOut, lastOut);
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
            at = loft.at(x).point(stretch, u);
            if (x - thickness * at.nx() < slice.x())
                low = x;
            else
                high = x;
        }
        double length = Math.hypot(here.yu(), here.zu());
        double dy = here.y() - (at.y() - thickness * at.ny()), dz = here.z() - (at.z() - thickness * at.nz());
        return length == 0 ? 0 : (dy * here.zu() - dz * here.yu()) / length;
    }
}
