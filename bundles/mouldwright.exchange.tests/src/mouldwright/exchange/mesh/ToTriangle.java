package mouldwright.exchange.mesh;

/** How far a place is from a triangle (C. Ericson, Real-Time Collision Detection, 2005, 5.1.5). */
final class ToTriangle {

    private ToTriangle() { }

    static double distance(TriangleMesh mesh, int triangle, double x, double y, double z) {
        double[] a = corner(mesh, triangle, 0), b = corner(mesh, triangle, 1), c = corner(mesh, triangle, 2), p = { x, y, z };
        double[] ab = minus(b, a), ac = minus(c, a), ap = minus(p, a);
        double d1 = dot(ab, ap), d2 = dot(ac, ap);
        if (d1 <= 0 && d2 <= 0)
            return length(ap);
        double[] bp = minus(p, b);
        double d3 = dot(ab, bp), d4 = dot(ac, bp);
        if (d3 >= 0 && d4 <= d3)
            return length(bp);
        double vc = d1 * d4 - d3 * d2;
        if (vc <= 0 && d1 >= 0 && d3 <= 0)
            return length(minus(ap, times(ab, d1 / (d1 - d3))));
        double[] cp = minus(p, c);
        double d5 = dot(ab, cp), d6 = dot(ac, cp);
        if (d6 >= 0 && d5 <= d6)
            return length(cp);
        double vb = d5 * d2 - d1 * d6;
        if (vb <= 0 && d2 >= 0 && d6 <= 0)
            return length(minus(ap, times(ac, d2 / (d2 - d6))));
        double va = d3 * d6 - d5 * d4;
        if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0)
            return length(minus(bp, times(minus(c, b), (d4 - d3) / (d4 - d3 + d5 - d6))));
        double all = va + vb + vc;
        return all == 0 ? length(ap) : length(minus(minus(ap, times(ab, vb / all)), times(ac, vc / all)));
    }

    private static double[] corner(TriangleMesh mesh, int triangle, int corner) {
        int place = mesh.corner(triangle, corner);
        return new double[] { mesh.at(place, 0), mesh.at(place, 1), mesh.at(place, 2) };
    }

    private static double[] minus(double[] a, double[] b) {
        return new double[] { a[0] - b[0], a[1] - b[1], a[2] - b[2] };
    }

    private static double[] times(double[] a, double factor) {
        return new double[] { a[0] * factor, a[1] * factor, a[2] * factor };
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double length(double[] a) {
        return Math.sqrt(dot(a, a));
    }
}
