package mouldwright.exchange.mesh;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.loft.SurfacePoint;

/** Where a place goes when each of the faces that meet there is moved inward by its own build-up: the shortest way that lets it lie on all of
 *  them, by least squares. At a corner of two faces that is the mitre; at the tip of a cone it is build-up / sin(half angle) down the axis. */
final class MovedPlace {

    /** Keeps the squares solvable where faces lie in one plane; shortens the way by a millionth. */
    private static final double SLACK = 1e-6;

    private final List<double[]> faces = new ArrayList<>();

    /** A face with its outward unit normal, moved inward by a thickness, metres. */
    void face(double nx, double ny, double nz, double thickness) {
        faces.add(new double[] { nx, ny, nz, thickness });
    }

    /** A face seen in the centreline plane too. */
    void mirrored(SurfacePoint point, double thickness) {
        face(point.nx(), point.ny(), point.nz(), thickness);
        face(point.nx(), -point.ny(), point.nz(), thickness);
    }

    /** The way, metres. */
    double[] way() {
        double[][] m = new double[3][4];
        boolean any = false;
        for (double[] face : faces) {
            any |= face[3] != 0;
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++)
                    m[i][j] += face[i] * face[j];
                m[i][3] -= face[i] * face[3];
            }
        }
        for (int i = 0; i < 3; i++)
            m[i][i] += SLACK;
        return any ? solved(m) : new double[3];
    }

    /** Gauss without exchange of rows: the matrix is symmetric and positive. */
    private static double[] solved(double[][] m) {
        for (int k = 0; k < 3; k++)
            for (int i = k + 1; i < 3; i++) {
                double factor = m[i][k] / m[k][k];
                for (int j = k; j < 4; j++)
                    m[i][j] -= factor * m[k][j];
            }
        double[] way = new double[3];
        for (int i = 2; i >= 0; i--) {
            double sum = m[i][3];
            for (int j = i + 1; j < 3; j++)
                sum -= m[i][j] * way[j];
            way[i] = sum / m[i][i];
        }
        return way;
    }
}
