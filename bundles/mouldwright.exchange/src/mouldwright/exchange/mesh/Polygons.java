package mouldwright.exchange.mesh;

import java.util.ArrayList;
import java.util.List;

/** Cuts a plane ring into triangles by its ears: corners whose triangle holds no other corner (G. H. Meisters, 1975). Every corner is used, and
 *  a ring without area is cut all the same, so that what it closes is closed. */
final class Polygons {

    private Polygons() { }

    /** Triangles of a ring that runs counter-clockwise.
     *  @param y of its corners @param z of its corners
     *  @return numbers of corners, three a triangle */
    static int[] triangles(double[] y, double[] z) {
        List<Integer> left = new ArrayList<>();
        for (int i = 0; i < y.length; i++)
            left.add(i);
        int[] cut = new int[Math.max(0, 3 * (y.length - 2))];
        int at = 0;
        int from = 0;
        while (left.size() > 2) {
            int ear = ear(left, y, z, from);
            int n = left.size();
            cut[at++] = left.get((ear + n - 1) % n);
            cut[at++] = left.get(ear);
            cut[at++] = left.get((ear + 1) % n);
            left.remove(ear);
            from = ear % Math.max(1, n - 1);
        }
        return cut;
    }

    /** The next true ear from a place on; a flat corner where there is none, which costs no area; else whatever comes. */
    private static int ear(List<Integer> left, double[] y, double[] z, int from) {
        int n = left.size(), flat = -1;
        for (int k = 0; k < n; k++) {
            int i = (from + k) % n;
            int a = left.get((i + n - 1) % n), b = left.get(i), c = left.get((i + 1) % n);
            double turn = cross(y, z, a, b, c);
            if (turn > 0 && isEmpty(left, y, z, a, b, c))
                return i;
            if (turn == 0 && flat < 0)
                flat = i;
        }
        return flat >= 0 ? flat : from % n;
    }

    private static boolean isEmpty(List<Integer> left, double[] y, double[] z, int a, int b, int c) {
        for (int p : left)
            if (p != a && p != b && p != c && cross(y, z, a, b, p) >= 0 && cross(y, z, b, c, p) >= 0 && cross(y, z, c, a, p) >= 0
                    && !same(y, z, p, a) && !same(y, z, p, b) && !same(y, z, p, c))
                return false;
        return true;
    }

    private static boolean same(double[] y, double[] z, int p, int q) {
        return y[p] == y[q] && z[p] == z[q];
    }

    private static double cross(double[] y, double[] z, int a, int b, int c) {
        return (y[b] - y[a]) * (z[c] - z[a]) - (z[b] - z[a]) * (y[c] - y[a]);
    }
}
