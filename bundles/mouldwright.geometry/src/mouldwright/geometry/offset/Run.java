package mouldwright.geometry.offset;

import mouldwright.geometry.plane.PlanePoint;

/** A strip with the line it is moved to.
 *
 *  @param strip    what is moved
 *  @param my @param mz  where each place is moved to, metres
 *  @param spread   how fast each place would move outward if all it is moved by grew in proportion, metres
 *  @param firstOut how far outward its first place is moved, negative inward, metres
 *  @param lastOut  how far outward its last place is moved */
record Run(Strip strip, double[] my, double[] mz, double[] spread, double firstOut, double lastOut) {

    /** Whether a place keeps the distance to this run by which the run is moved inward, but for a share of it. */
    boolean clears(PlanePoint place, double share) {
        double before = inward(0);
        for (int i = 0; i < last(); i++) {
            double after = inward(i + 1), inward = Math.min(before, after) * (1 - share);
            if (inward > 0 && squareDistance(i, place) < inward * inward)
                return false;
            before = after;
        }
        return true;
    }

    /** Whether no place of it is moved inward. */
    boolean staysOut() {
        for (int i = 0; i <= last(); i++)
            if (inward(i) > 0)
                return false;
        return true;
    }

    private double inward(int i) {
        return (mz[i] - strip.z()[i]) * strip.ty()[i] - (my[i] - strip.y()[i]) * strip.tz()[i];
    }

    private double squareDistance(int i, PlanePoint p) {
        double y = strip.y()[i], z = strip.z()[i], dy = strip.y()[i + 1] - y, dz = strip.z()[i + 1] - z, square = dy * dy + dz * dz;
        double w = square == 0 ? 0 : Math.clamp(((p.y() - y) * dy + (p.z() - z) * dz) / square, 0.0, 1.0);
        double fy = y + w * dy - p.y(), fz = z + w * dz - p.z();
        return fy * fy + fz * fz;
    }

    int last() { return my.length - 1; }
}
