package mouldwright.geometry.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Rings that cross themselves. */
class WoundRegionTest {

    // a tangled ring goes through faces of the JTS Topology Suite, whose order differs from run to run
    @Test void aTangledRingIsCleanedTheSameEachTime() {
        Random random = new Random(4);
        double[] y = random.doubles(40).toArray(), z = random.doubles(40).toArray();
        Set<Double> areas = new HashSet<>();
        Set<List<PlanePoint>> outlines = new HashSet<>();
        for (int i = 0; i < 50; i++) {
            Region region = WoundRegion.tangled(y.clone(), z.clone(), p -> true, false);
            areas.add(region.area());
            outlines.add(region.pieces().getFirst().points());
        }
        assertThat(areas).hasSize(1);
        assertThat(outlines).hasSize(1);
    }

    // both ways must agree wherever loops only want cutting off
    @Property(tries = 300)
    void cuttingLoopsOffLeavesWhatNodingLeaves(@ForAll @Size(9) List<@DoubleRange(min = 0.05, max = 1) Double> radii,
            @ForAll @DoubleRange(min = 0.05, max = 0.4) double in) {
        int n = radii.size();
        double[] y = new double[2 * n], z = new double[2 * n];
        for (int i = 0; i < n; i++) {                           // each side of a star moved in by itself, corners left crossing
            double a = 2 * Math.PI * i / n, b = 2 * Math.PI * (i + 1) / n, r = radii.get(i), s = radii.get((i + 1) % n);
            double dy = s * Math.cos(b) - r * Math.cos(a), dz = s * Math.sin(b) - r * Math.sin(a), length = Math.hypot(dy, dz);
            y[2 * i] = r * Math.cos(a) - in * dz / length;
            z[2 * i] = r * Math.sin(a) + in * dy / length;
            y[2 * i + 1] = s * Math.cos(b) - in * dz / length;
            z[2 * i + 1] = s * Math.sin(b) + in * dy / length;
        }
        for (boolean filled : new boolean[] { false, true })
            assertThat(WoundRegion.of(y, z, p -> true, filled).region().area())
                    .isCloseTo(WoundRegion.tangled(y, z, p -> true, filled).area(), within(1e-9));
    }

    @Test void eachEdgeKnowsWhereItComesFrom() { // a box with a small bow at its second corner
        double[] y = { 0, 4.2, 4, 4, 0 }, z = { 0, 0, -0.1, 3, 3 };
        WoundRegion wound = WoundRegion.of(y, z, p -> true, false);
        assertThat(wound.edges().orElseThrow()).containsExactly(0, 2, 3, 4);
        assertThat(wound.region().area()).isCloseTo(12, within(1e-12));
    }
}
