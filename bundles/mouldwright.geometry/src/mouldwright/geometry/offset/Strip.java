package mouldwright.geometry.offset;

import java.util.Arrays;

/** A part of an outline without corners, with what is taken off it.
 *
 *  @param y  @param z   the outline, metres
 *  @param ty @param tz  its unit tangents
 *  @param in            build-up in the section plane, metres inward
 *  @param rate          how fast that grows with the build-up along the normal, metres per metre
 *  @param thickness     build-up along the normal, metres
 *  @param bare          whether it gets no build-up, and is not overfilled */
record Strip(double[] y, double[] z, double[] ty, double[] tz, double[] in, double[] rate, double thickness, boolean bare) {

    /** The same on the other side of the centreline, run through so that the whole stays counter-clockwise. */
    Strip mirrored() {
        return new Strip(reversed(y, -1), reversed(z, 1), reversed(ty, 1), reversed(tz, -1), reversed(in, 1), reversed(rate, 1),
                thickness, bare);
    }

    private static double[] reversed(double[] values, int sign) {
        double[] r = new double[values.length];
        for (int i = 0; i < r.length; i++)
            r[i] = sign * values[values.length - 1 - i];
        return r;
    }

    /** A straight bare piece, level to starboard or to port. */
    static Strip level(double fromY, double toY, double z) {
        double t = Math.signum(toY - fromY);
        return new Strip(new double[] { fromY, toY }, new double[] { z, z }, new double[] { t, t }, new double[2], new double[2],
                new double[2], 0, true);
    }

    /** Moved by its build-up and further.
     *  @param growth outward, metres, not where it is bare
     *  @param depth  inward, metres, bare or not */
    Run moved(double growth, double depth) {
        int n = y.length;
        double further = (bare ? 0 : growth) - depth;
        double[] my = new double[n], mz = new double[n], spread = new double[n];
        for (int i = 0; i < n; i++) {
            double out = further - in[i];
            my[i] = y[i] + out * tz[i];
            mz[i] = z[i] - out * ty[i];
            spread[i] = further - thickness * rate[i];
        }
        return new Run(this, my, mz, spread, further - in[0], further - in[n - 1]);
    }

    int last() { return y.length - 1; }

    double greatestIn() {
        return Arrays.stream(in).max().orElse(0);
    }
}
