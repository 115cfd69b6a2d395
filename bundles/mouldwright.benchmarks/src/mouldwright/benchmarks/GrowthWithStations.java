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

/** The whole build plan of longer and longer bodies; wanted no worse than n log n in the number of stations. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class GrowthWithStations {
    /** Of each half section. */
    private static final int POINTS = 20;

    /** Stations of the body, each with a plate. */
    @Param({ "5", "10", "20", "50", "100", "200" })
    public int stations;

    private Plug plug;

    /** Parses it. */
    @Setup public void read() {
        plug = new Texts().plug(LargeSpec.text(stations, POINTS));
    }

    /** Estimates it. */
    @Benchmark public BuildPlan estimate() {
        return Texts.estimate(plug);
    }
}
