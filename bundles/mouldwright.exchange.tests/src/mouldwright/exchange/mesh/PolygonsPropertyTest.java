package mouldwright.exchange.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** An end face is cut into triangles that fill it once. */
class PolygonsPropertyTest {

    /** Of a ring with n corners n - 2 triangles, none turned over, together the area by the shoelace formula. */
    @Property(tries = 200)
    void trianglesOfAStarFillItOnce(@ForAll @IntRange(min = 3, max = 60) int corners, @ForAll long seed) {
        Random random = new Random(seed);
        double[] y = new double[corners], z = new double[corners];
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners, out = 0.2 + random.nextDouble();
            y[i] = out * Math.cos(angle);
            z[i] = out * Math.sin(angle);
        }
        int[] cut = Polygons.triangles(y, z);
        assertThat(cut).hasSize(3 * (corners - 2));
        double sum = 0, whole = 0;
        for (int t = 0; t < cut.length; t += 3) {
            double area = area(y, z, cut[t], cut[t + 1], cut[t + 2]);
            assertThat(area).isGreaterThanOrEqualTo(0);
            sum += area;
        }
        for (int i = 0; i < corners; i++)
            whole += (y[i] * z[(i + 1) % corners] - y[(i + 1) % corners] * z[i]) / 2;
        assertThat(sum).isCloseTo(whole, within(1e-12));
    }

    private static double area(double[] y, double[] z, int a, int b, int c) {
        return ((y[b] - y[a]) * (z[c] - z[a]) - (z[b] - z[a]) * (y[c] - y[a])) / 2;
    }
}
