package mouldwright.benchmarks;

import java.util.concurrent.TimeUnit;
import mouldwright.model.Plug;
import mouldwright.plan.BuildPlan;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The whole build plan of one body with more and more local plies; wanted no worse than n log n in the number of plies. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class GrowthWithPlies {
    /** Of each half section. */
    private static final int POINTS = 20;
    /** Of the body. */
    private static final int STATIONS = 20;

    /** Local plies, each over a stretch of its own. */
    @Param({ "5", "10", "20", "50", "100" })
    public int plies;

    private Plug plug;

    /** Parses it. */
    @Setup public void read() {
        plug = new Texts().plug(LargeSpec.text(STATIONS, POINTS, plies));
    }

    /** Estimates it. */
    @Benchmark public BuildPlan estimate() {
        return Texts.estimate(plug);
    }
}
