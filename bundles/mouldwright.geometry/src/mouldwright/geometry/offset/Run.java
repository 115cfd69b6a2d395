package mouldwright.geometry.offset;

import mouldwright.geometry.plane.PlanePoint;

/** A part of an outline without corners, with the line it is moved to.
 *
 *  @param y  @param z   the outline, metres
 *  @param ty @param tz  its unit tangents
 *  @param my @param mz  where each place is moved to, metres
 *  @param firstOut how far outward its first place is moved, negative inward, metres
 *  @param lastOut  how far outward its last place is moved */
record Run(double[] y, double[] z, double[] ty, double[] tz, double[] my, double[] mz, double firstOut, double lastOut) {

    /** The same on the other side of the centreline, run through so that the whole stays counter-clockwise. */
    Run mirrored() {
        return new Run(reversed(y, -1), reversed(z, 1), reversed(ty, 1), reversed(tz, -1), reversed(my, -1), reversed(mz, 1),
                lastOut, firstOut);
    }

    private static double[] reversed(double[] values, int sign) {
        double[] r = new double[values.length];
        for (int i = 0; i < r.length; i++)
            r[i] = sign * values[values.length - 1 - i];
        return r;
    }

    /** A straight piece, level to starboard or to port, moved outward by an amount. */
    static Run level(double fromY, double toY, double z, double out) {
        double t = Math.signum(toY - fromY);
        double moved = z - t * out;                             // outward of a piece running to starboard is down
        return new Run(new double[] { fromY, toY }, new double[] { z, z }, new double[] { t, t }, new double[2],
                new double[] { fromY, toY }, new double[] { moved, moved }, out, out);
    }

    /** Whether a place keeps the distance to this run by which the run is moved inward, but for a share of it. */
    boolean clears(PlanePoint place, double share) {
        for (int i = 0; i < last(); i++) {
            double inward = Math.min(inward(i), inward(i + 1)) * (1 - share);
            if (inward > 0 && distance(i, place) < inward)
                return false;
        }
        return true;
    }

    /** Whether no place of it is moved inward. */
    boolean staysOut() {
        for (int i = 0; i < y.length; i++)
            if (inward(i) > 0)
                return false;
        return true;
    }

    private double inward(int i) {
        return (mz[i] - z[i]) * ty[i] - (my[i] - y[i]) * tz[i];
    }

    private double distance(int i, PlanePoint p) {
        double dy = y[i + 1] - y[i], dz = z[i + 1] - z[i], square = dy * dy + dz * dz;
        double w = square == 0 ? 0 : Math.clamp(((p.y() - y[i]) * dy + (p.z() - z[i]) * dz) / square, 0.0, 1.0);
        return Math.hypot(y[i] + w * dy - p.y(), z[i] + w * dz - p.z());
    }

    int last() { return y.length - 1; }
}
