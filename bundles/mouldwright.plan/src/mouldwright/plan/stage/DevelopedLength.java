package mouldwright.plan.stage;

import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePlace;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.section.SectionKind;

/** How long a piece of mat is along the body: the way over the surface at a fixed share of a band, where that is longest.
 *  The way is followed by chords; a piece has a lap to spare, which is far more than chords fall short of a bay's curve. */
final class DevelopedLength {

    private static final int CHORDS = 8;
    private static final int WAYS = 8;

    /** How far inside a pointed end its shares are read, as a share of the stretch; the point itself has none. */
    private static final double INSIDE = 1e-6;

    private final Loft plug;
    private final Bare bare;
    private final GirthBand band;

    DevelopedLength(Loft plug, Bare bare, GirthBand band) {
        this.plug = plug;
        this.bare = bare;
        this.band = band;
    }

    /** The longest way from one station line to another, m; 0 where all of the band is bare. */
    double longest(double start, double end) {
        Slice[] slices = new Slice[CHORDS + 1];
        for (int i = 0; i <= CHORDS; i++)
            slices[i] = slice(start, end, (double) i / CHORDS);
        double longest = longest(slices, false);
        return plug.kind() == SectionKind.FULL ? Math.max(longest, longest(slices, true)) : longest;
    }

    private Slice slice(double start, double end, double share) {
        Slice slice = plug.at(start + share * (end - start));
        return slice.isDegenerate() ? plug.at(start + Math.clamp(share, INSIDE, 1 - INSIDE) * (end - start)) : slice;
    }

    private double longest(Slice[] slices, boolean port) {
        double longest = 0;
        for (int way = 0; way <= WAYS; way++) {
            double share = (double) way / WAYS;
            double length = 0;
            SurfacePoint before = null;
            for (Slice slice : slices) {
                SurfacePlace place = place(slice, share, port);
                SurfacePoint point = slice.isBare(place, bare) ? null : slice.point(place.stretch(), place.u());
                length += before == null || point == null ? 0
                        : Math.hypot(point.x() - before.x(), Math.hypot(point.y() - before.y(), point.z() - before.z()));
                before = point;
            }
            longest = Math.max(longest, length);
        }
        return longest;
    }

    private SurfacePlace place(Slice slice, double share, boolean port) {
        double from = slice.share(band.from(), port).orElse(0.0);
        double to = slice.share(band.to(), port).orElse(1.0);
        return slice.placeAtShare(from + share * (to - from), port);
    }
}
