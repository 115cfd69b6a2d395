package mouldwright.geometry.crown;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleUnaryOperator;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.ShareSet;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePlace;

/** Looks for the places furthest off a board: over a grid first, then by golden section along and round the body. */
final class CrownSearch {
    private static final int ALONG = 16;
    private static final int ROUND = 16;
    private static final int ROUNDS = 30;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    /** Heights below this share of the bay's length come from rounding. */
    private static final double NOISE = 1e-9;

    private final Loft loft;
    private final double foreX;
    private final double aftX;
    private final Bare bare;
    private final Board board;
    private final BooleanSupplier cancelled;

    CrownSearch(Loft loft, double foreX, double aftX, Bare bare, Board board, BooleanSupplier cancelled) {
        this.loft = loft;
        this.foreX = foreX;
        this.aftX = aftX;
        this.bare = bare;
        this.board = board;
        this.cancelled = cancelled;
    }

    private record Spot(double height, double x, int stretch, double u) { }

    Crown search() {
        Spot high = new Spot(0, foreX, 0, 0), low = high;
        for (int i = 1; i < ALONG; i++) {
            if (cancelled.getAsBoolean())
                throw new CancellationException();
            Slice slice = loft.at(foreX + (aftX - foreX) * i / ALONG);
            ShareSet[] covered = { slice.bareShares(bare, false), slice.bareShares(bare, true) };
            for (int s = 0; s < slice.stretches(); s++)
                for (int k = 0; k <= ROUND; k++) {
                    double u = (double) k / ROUND;
                    if (isBare(slice, s, u, covered))
                        continue;
                    double h = board.height(s, u, slice.point(s, u));
                    if (h > high.height)
                        high = new Spot(h, slice.x(), s, u);
                    if (h < low.height)
                        low = new Spot(h, slice.x(), s, u);
                }
        }
        return new Crown(foreX, aftX, peak(high, 1), peak(low, -1));
    }

    private static boolean isBare(Slice slice, int stretch, double u, ShareSet[] covered) {
        if (slice.isBare(stretch))
            return true;
        SurfacePlace place = slice.place(stretch, u);
        return covered[place.port() ? 1 : 0].contains(place.share());
    }

    /** @param sign +1 for the highest, -1 for the deepest place */
    private Optional<CrownPeak> peak(Spot start, int sign) {
        double noise = NOISE * (aftX - foreX);
        if (Math.abs(start.height) <= noise)
            return Optional.empty();
        double x = start.x, u = start.u, dx = (aftX - foreX) / ALONG, du = 1.0 / ROUND;
        for (int pass = 0; pass < 2; pass++) {
            double share = u, there = x;
            x = golden(at -> sign * height(at, start.stretch, share), Math.max(foreX, x - dx), Math.min(aftX, x + dx), x);
            Slice slice = loft.at(x);
            u = golden(at -> sign * board.height(start.stretch, at, slice.point(start.stretch, at)), Math.max(0, u - du),
                    Math.min(1, u + du), u);
            SurfacePlace place = slice.place(start.stretch, u);
            if (slice.isBare(place, bare)) {
                u = share;
                x = there;
            }
        }
        return Optional.of(new CrownPeak(height(x, start.stretch, u), loft.at(x).place(start.stretch, u)));
    }

    private double height(double x, int stretch, double u) {
        return board.height(stretch, u, loft.point(x, stretch, u));
    }

    /** The greatest value between two bounds, never worse than at the start. */
    private static double golden(DoubleUnaryOperator f, double from, double to, double start) {
        double low = from, high = to;
        double a = high - GOLDEN * (high - low), b = low + GOLDEN * (high - low);
        double fa = f.applyAsDouble(a), fb = f.applyAsDouble(b);
        for (int round = 0; round < ROUNDS; round++) {
            if (fa > fb) {
                high = b;
                b = a;
                fb = fa;
                a = high - GOLDEN * (high - low);
                fa = f.applyAsDouble(a);
            } else {
                low = a;
                a = b;
                fa = fb;
                b = low + GOLDEN * (high - low);
                fb = f.applyAsDouble(b);
            }
        }
        double found = 0.5 * (low + high);
        return f.applyAsDouble(found) > f.applyAsDouble(start) ? found : start;
    }
}
