package mouldwright.geometry.loft;

import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import mouldwright.geometry.section.SectionKind;

/** Finds where a section is broadest, highest or lowest. */
final class SliceExtremes {

    /** Places looked at in a stretch. */
    private static final int LOOKS = 24;
    /** Extents nearer than this share of the girth are one: an upright wall or a level roof, whichever way it was rounded. */
    private static final double SAME = 1e-7;
    /** Rounds of the golden section: to 1e-9 of a look. */
    private static final int ROUNDS = 44;

    private final Slice slice;

    SliceExtremes(Slice slice) {
        this.slice = slice;
    }

    /** Share of the half girth of the broadest place of one side, the lowest of several. */
    double broadest(boolean port) {
        boolean image = port && slice.loft().kind() == SectionKind.FULL;
        return greatest(p -> image ? -p.y() : p.y(), place -> place.port() == image, SurfacePlace::share).share();
    }

    /** The highest place, of several the nearest to top centre. */
    SurfacePlace highest() {
        return greatest(SurfacePoint::z, place -> true, place -> -place.share());
    }

    /** The lowest place, of several the nearest to bottom centre. */
    SurfacePlace lowest() {
        return greatest(p -> -p.z(), place -> true, SurfacePlace::share);
    }

    private SurfacePlace greatest(ToDoubleFunction<SurfacePoint> extent, Predicate<SurfacePlace> within, ToDoubleFunction<SurfacePlace> rank) {
        double slack = SAME * slice.girth();
        double most = Double.NEGATIVE_INFINITY;
        SurfacePlace at = slice.place(0, 0);
        for (int stretch = 0; stretch < slice.stretches(); stretch++)
            for (int k = 0; k <= LOOKS; k++) {
                SurfacePlace place = slice.place(stretch, (double) k / LOOKS);
                if (!within.test(place))
                    continue;
                double here = extent.applyAsDouble(slice.point(stretch, place.u()));
                if (here > most + slack || here >= most - slack && rank.applyAsDouble(place) < rank.applyAsDouble(at)) {
                    most = Math.max(most, here);
                    at = place;
                }
            }
        return refined(at, extent, within, slack);
    }

    /** Golden section about the look found; a corner, a wall or a level roof keeps the look itself. */
    private SurfacePlace refined(SurfacePlace at, ToDoubleFunction<SurfacePoint> extent, Predicate<SurfacePlace> within, double slack) {
        ToDoubleFunction<Double> of = u -> extent.applyAsDouble(slice.point(at.stretch(), u));
        double low = Math.max(0, at.u() - 1.0 / LOOKS), high = Math.min(1, at.u() + 1.0 / LOOKS);
        double golden = (Math.sqrt(5) - 1) / 2;
        for (int round = 0; round < ROUNDS; round++) {
            double a = high - golden * (high - low), b = low + golden * (high - low);
            if (of.applyAsDouble(a) >= of.applyAsDouble(b))
                high = b;
            else
                low = a;
        }
        SurfacePlace place = slice.place(at.stretch(), 0.5 * (low + high));
        return of.applyAsDouble(place.u()) > of.applyAsDouble(at.u()) + slack && within.test(place) ? place : at;
    }
}
