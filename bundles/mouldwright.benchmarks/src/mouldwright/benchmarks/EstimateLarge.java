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
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** From the model of 200 stations of 60 points each to the whole build plan; wanted under 1 s within 300 MB of heap. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 8, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(value = 1, jvmArgsAppend = "-Xmx300m")
public class EstimateLarge {
    private Plug plug;

    /** Parses it. */
    @Setup public void read() {
        plug = new Texts().plug(LargeSpec.text(LargeSpec.STATIONS, LargeSpec.POINTS));
    }

    /** Estimates it. */
    @Benchmark public BuildPlan estimate() {
        return Texts.estimate(plug);
    }

    /** Estimates shape, frame, fill and skin alone. */
    @Benchmark public BuildPlan firstStages() {
        return Texts.estimateFirstStages(plug);
    }
}
