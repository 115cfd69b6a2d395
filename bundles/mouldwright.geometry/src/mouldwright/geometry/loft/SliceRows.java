package mouldwright.geometry.loft;

/** The columns of a loft at one parameter, with their derivatives. Between columns a cubic through values and derivatives of
 *  the two nearest serves: with a dozen cells of eight columns it is off by less than 1e-7 of a half circle's radius. */
final class SliceRows {
    private static final int F = Sampling.FIGURES;

    private final UGrid grid;
    private final double[] value;                   // y, z, yu, zu
    private final double[] slope;                   // the same by v
    private final double xv;

    /** @param wayIn +1 or -1 at a pinched end: the way into the body */
    SliceRows(UGrid grid, double[] value, double[] slope, double xv, int wayIn) {
        this.grid = grid;
        this.value = value;
        this.slope = slope;
        this.xv = xv;
        if (wayIn != 0)
            replacePoint(wayIn);
    }

    /** At a point the outline has no direction; the direction it takes just inside the body serves for normals and shares. */
    private void replacePoint(int wayIn) {
        double size = 0, around = 0;
        for (int i = 0; i < value.length; i += F) {
            size = Math.max(size, Math.sqrt(slope[i + 2] * slope[i + 2] + slope[i + 3] * slope[i + 3]));
            around = Math.max(around, Math.sqrt(value[i + 2] * value[i + 2] + value[i + 3] * value[i + 3]));
        }
        if (around > 1e-9 * size)
            return;
        for (int i = 0; i < value.length; i += F) {
            value[i + 2] = wayIn * slope[i + 2];
            value[i + 3] = wayIn * slope[i + 3];
            slope[i + 2] = slope[i + 3] = 0;
        }
        point = true;
    }

    private boolean point;

    /** Whether the whole outline is one point, its directions those just inside the body. */
    boolean isPoint() { return point; }

    UGrid grid() { return grid; }

    double xv() { return xv; }

    int index(int stretch, int column) {
        return (stretch * grid.columns() + column) * F;
    }

    double y(int index) { return value[index]; }

    double z(int index) { return value[index + 1]; }

    double yu(int index) { return value[index + 2]; }

    double zu(int index) { return value[index + 3]; }

    double yv(int index) { return slope[index]; }

    double zv(int index) { return slope[index + 1]; }

    /** Length of outline per u. */
    double speed(int index) {
        return Math.sqrt(value[index + 2] * value[index + 2] + value[index + 3] * value[index + 3]);
    }

    /** Surface per u and v. */
    double density(int index) {
        return density(yu(index), zu(index), yv(index), zv(index));
    }

    private double density(double yu, double zu, double yv, double zv) {
        double across = yv * zu - zv * yu;
        return Math.sqrt(across * across + xv * xv * (yu * yu + zu * zu));
    }

    /** The surface at any share of a stretch.
     *  @param out filled with y, z, yu, zu, yv, zv and the surface per u and v */
    void at(int stretch, double u, double[] out) {
        int column = grid.below(u);
        double u0 = grid.u(column), h = grid.u(column + 1) - u0, w = (u - u0) / h;
        int a = index(stretch, column), b = a + F;
        if (point) {
            for (int i = 0; i < 2; i++) {
                out[i] = value[a + i];
                out[2 + i] = value[a + 2 + i] * (1 - w) + value[b + 2 + i] * w;
                out[4 + i] = slope[a + i] * (1 - w) + slope[b + i] * w;
            }
        } else {
            between(value, slope, a, h, w, out);
        }
        out[6] = density(out[2], out[3], out[4], out[5]);
    }

    /** The cubic between two neighbouring columns. @param a where the first one's figures start */
    private static void between(double[] value, double[] slope, int a, double h, double w, double[] out) {
        int b = a + F;
        double m = 1 - w;
        double v0 = m * m * (1 + 2 * w), v1 = w * w * (3 - 2 * w), d0 = h * w * m * m, d1 = -h * w * w * m;
        double r = 6 * w * m / h, e0 = m * (1 - 3 * w), e1 = w * (3 * w - 2);
        for (int i = 0; i < 2; i++) {
            out[i] = v0 * value[a + i] + v1 * value[b + i] + d0 * value[a + 2 + i] + d1 * value[b + 2 + i];
            out[2 + i] = r * (value[b + i] - value[a + i]) + e0 * value[a + 2 + i] + e1 * value[b + 2 + i];
            out[4 + i] = v0 * slope[a + i] + v1 * slope[b + i] + d0 * slope[a + 2 + i] + d1 * slope[b + 2 + i];
        }
    }

    SurfacePoint point(double x, int stretch, double u) {
        double[] p = new double[7];
        at(stretch, u, p);
        return point(x, xv, p, point);
    }

    /** A place between two columns alone, anywhere but at a pinched end.
     *  @param value y, z, yu, zu of the column below and of the one above @param slope the same by v
     *  @param h between them @param w share of that */
    static SurfacePoint point(double x, double xv, double[] value, double[] slope, double h, double w) {
        double[] p = new double[6];
        between(value, slope, 0, h, w, p);
        return point(x, xv, p, false);
    }

    private static SurfacePoint point(double x, double xv, double[] p, boolean atPoint) {
        double nx = p[5] * p[2] - p[4] * p[3], ny = xv * p[3], nz = -xv * p[2];
        double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
        if (length > 0) {
            nx /= length;
            ny /= length;
            nz /= length;
        }
        return new SurfacePoint(x, p[0], p[1], nx, ny, nz, atPoint ? 0 : p[2], atPoint ? 0 : p[3], p[4] / xv, p[5] / xv);
    }
}
