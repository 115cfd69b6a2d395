package mouldwright.geometry.draft;

import java.util.List;

/** The plane through weighted places that leaves the least sum of squares of their distances: through their centroid, its normal the
 *  direction in which they are spread least.
 *
 *  @param centre of it
 *  @param normal a metre long */
record MeanPlane(Vector centre, Vector normal) {

    /** Sweeps after which nothing changes any more; three by three needs about five. */
    private static final int SWEEPS = 12;

    /** @param ways the plane is held along, one for each of the first places: a strip's rungs, however short, lie in its plane if it has one */
    static MeanPlane of(List<Vector> places, double[] weights, List<Vector> ways) {
        Vector sum = new Vector(0, 0, 0);
        double all = 0;
        for (int i = 0; i < places.size(); i++) {
            sum = sum.plus(places.get(i).times(weights[i]));
            all += weights[i];
        }
        Vector centre = sum.times(1 / all);
        double[][] spread = new double[3][3];
        for (int i = 0; i < places.size(); i++) {
            Vector d = places.get(i).minus(centre);
            double[] c = {d.x(), d.y(), d.z()};
            for (int r = 0; r < 3; r++)
                for (int k = 0; k < 3; k++)
                    spread[r][k] += weights[i] * c[r] * c[k];
        }
        for (int i = 0; i < ways.size(); i++) {
            double[] c = {ways.get(i).x(), ways.get(i).y(), ways.get(i).z()};
            for (int r = 0; r < 3; r++)
                for (int k = 0; k < 3; k++)
                    spread[r][k] += weights[i] * all * all * c[r] * c[k];
        }
        return new MeanPlane(centre, least(spread));
    }

    double largestDistance(List<Vector> places) {
        return places.stream().mapToDouble(place -> Math.abs(place.minus(centre).dot(normal))).max().orElse(0);
    }

    /** The eigenvector of the least eigenvalue of a symmetric matrix, by Jacobi's rotations. */
    private static Vector least(double[][] a) {
        double[][] v = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        for (int sweep = 0; sweep < SWEEPS; sweep++)
            for (int p = 0; p < 2; p++)
                for (int q = p + 1; q < 3; q++)
                    rotate(a, v, p, q);
        int least = 0;
        for (int i = 1; i < 3; i++)
            least = a[i][i] < a[least][least] ? i : least;
        return new Vector(v[0][least], v[1][least], v[2][least]).unit();
    }

    private static void rotate(double[][] a, double[][] v, int p, int q) {
        if (a[p][q] == 0)
            return;
        double theta = (a[q][q] - a[p][p]) / (2 * a[p][q]);
        double t = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.hypot(theta, 1));
        double c = 1 / Math.hypot(t, 1), s = t * c;
        for (int k = 0; k < 3; k++) {
            double kp = a[k][p], kq = a[k][q];
            a[k][p] = c * kp - s * kq;
            a[k][q] = s * kp + c * kq;
        }
        for (int k = 0; k < 3; k++) {
            double pk = a[p][k], qk = a[q][k];
            a[p][k] = c * pk - s * qk;
            a[q][k] = s * pk + c * qk;
            double kp = v[k][p], kq = v[k][q];
            v[k][p] = c * kp - s * kq;
            v[k][q] = s * kp + c * kq;
        }
    }
}
