package mouldwright.geometry.plane;

/** How often a closed ring runs round a place. Source: D. Sunday, Inclusion of a point in a polygon, by crossings of a ray. */
final class Winding {
    private Winding() { }

    /** Positive counter-clockwise. */
    static int number(double[] y, double[] z, double py, double pz) {
        int winding = 0;
        int n = y.length;
        for (int i = 0, j = n - 1; i < n; j = i++) {
            double side = (y[i] - y[j]) * (pz - z[j]) - (py - y[j]) * (z[i] - z[j]);
            if (z[j] <= pz && z[i] > pz && side > 0)
                winding++;
            else if (z[j] > pz && z[i] <= pz && side < 0)
                winding--;
        }
        return winding;
    }
}
