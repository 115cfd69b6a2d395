package mouldwright.exchange.mesh;

/** Triangles over shared places, turned counter-clockwise seen from outside. Metres; x aft, y to starboard, z up: right-handed. */
public final class TriangleMesh {

    private final double[] places;
    private final int[] corners;

    /** @param places  x, y, z one place after another
     *  @param corners of triangles, three each, as numbers of places from 0 */
    TriangleMesh(double[] places, int[] corners) {
        this.places = places.clone();
        this.corners = corners.clone();
    }

    /** How many places there are. */
    public int places() { return places.length / 3; }

    /** How many triangles there are. */
    public int triangles() { return corners.length / 3; }

    /** A figure of a place, metres. @param axis 0 for x, 1 for y, 2 for z */
    public double at(int place, int axis) { return places[3 * place + axis]; }

    /** The place at a corner of a triangle. @param corner 0 to 2 */
    public int corner(int triangle, int corner) { return corners[3 * triangle + corner]; }

    /** The vector product of two edges of a triangle: outward, as long as twice its area. */
    public double[] across(int triangle) {
        int a = corner(triangle, 0), b = corner(triangle, 1), c = corner(triangle, 2);
        double ux = at(b, 0) - at(a, 0), uy = at(b, 1) - at(a, 1), uz = at(b, 2) - at(a, 2);
        double vx = at(c, 0) - at(a, 0), vy = at(c, 1) - at(a, 1), vz = at(c, 2) - at(a, 2);
        return new double[] { uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx };
    }

    /** Volume inside, cubic metres: the sum of the pyramids from the origin over all triangles (divergence theorem). */
    public double volume() {
        double six = 0;
        for (int t = 0; t < triangles(); t++) {
            double[] n = across(t);
            int a = corner(t, 0);
            six += at(a, 0) * n[0] + at(a, 1) * n[1] + at(a, 2) * n[2];
        }
        return six / 6;
    }

    /** Surface, square metres. */
    public double area() {
        double twice = 0;
        for (int t = 0; t < triangles(); t++) {
            double[] n = across(t);
            twice += Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
        }
        return twice / 2;
    }

    /** How far it reaches along an axis, metres. */
    public double extent(int axis) {
        double least = Double.POSITIVE_INFINITY, most = Double.NEGATIVE_INFINITY;
        for (int p = 0; p < places(); p++) {
            least = Math.min(least, at(p, axis));
            most = Math.max(most, at(p, axis));
        }
        return most - least;
    }
}
