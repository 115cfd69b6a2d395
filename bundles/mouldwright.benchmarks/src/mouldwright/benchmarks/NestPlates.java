package mouldwright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import mouldwright.geometry.nest.Nest;
import mouldwright.geometry.nest.NestOrder;
import mouldwright.geometry.nest.NestPart;
import mouldwright.geometry.nest.Nester;
import mouldwright.geometry.nest.Turns;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A hundred plates of a body that swells and narrows, of 220 corners each, most with a pocket of 150, on full sheets; wanted under 20 s on two processors. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 0)
@Measurement(iterations = 2)
@Fork(1)
public class NestPlates {
    private static final int PLATES = 100, CORNERS = 220, POCKET_CORNERS = 150;
    private static final double RIM = 0.06;
    private NestOrder order;

    private static Outline superellipse(double a, double b, double exponent, int corners) {
        List<PlanePoint> points = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double c = Math.cos(2 * Math.PI * i / corners), s = Math.sin(2 * Math.PI * i / corners);
            points.add(new PlanePoint(a * Math.copySign(Math.pow(Math.abs(c), 2 / exponent), c), b * Math.copySign(Math.pow(Math.abs(s), 2 / exponent), s)));
        }
        return Outline.of(points);
    }

    /** Draws them. */
    @Setup public void draw() {
        List<NestPart> parts = new ArrayList<>();
        for (int i = 1; i <= PLATES; i++) {
            double swell = 0.25 + 0.75 * Math.sin(Math.PI * i / (PLATES + 1)), a = 0.3 * swell, b = 0.25 * swell + 0.05, exponent = 2 + 0.02 * i;
            boolean pocketed = Math.min(a, b) > 2 * RIM;
            parts.add(new NestPart("S" + i, superellipse(a, b, exponent, CORNERS),
                    pocketed ? List.of(superellipse(a - RIM, b - RIM, exponent, POCKET_CORNERS)) : List.of(), Turns.QUARTERS));
        }
        order = new NestOrder(2.44, 1.22, 0.006, 0.01, parts, NestOrder.usualTrials(PLATES), 1);
    }

    /** Lays them, with as many trials as is usual. */
    @Benchmark public Nest lay() {
        return Nester.nest(order, progress -> { }, () -> false);
    }
}
