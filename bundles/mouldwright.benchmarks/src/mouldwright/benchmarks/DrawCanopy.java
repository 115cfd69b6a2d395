package mouldwright.benchmarks;

import java.util.concurrent.TimeUnit;
import mouldwright.model.Plug;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.draw.Draws;
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

/** The plan of the example canopy with a thousand draws of its uncertain figures; wanted under 400 ms together. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 6, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class DrawCanopy {
    private Plug plug;
    private BuildPlan plan;

    /** Parses and plans it. */
    @Setup public void read() {
        plug = new Texts().plug(Texts.canopy());
        plan = Texts.estimate(plug);
    }

    /** The draws alone. */
    @Benchmark public Draws draws() {
        return drawn(plan);
    }

    /** The plan and its draws. */
    @Benchmark public Draws estimateWithDraws() {
        return drawn(Texts.estimate(plug));
    }

    private static Draws drawn(BuildPlan plan) {
        return Draws.of(plan.reckoning(), Draws.COMMON, Draws.COMMON_SEED, () -> false);
    }
}
