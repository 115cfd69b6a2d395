package mouldwright.benchmarks;

import java.util.concurrent.TimeUnit;
import org.eclipse.xtext.resource.XtextResource;
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

/** The text of the example canopy with one word misspelt in the middle, so that the parser has to find its way again. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ParseWithOneTypo {
    private Texts texts;
    private String text;

    /** Sets the language up. */
    @Setup public void read() {
        texts = new Texts();
        text = Texts.canopy().replace("break {", "brake {");
        if (texts.parse(text).getErrors().isEmpty())
            throw new IllegalStateException("the misspelt example has no errors");
    }

    /** Parses it. */
    @Benchmark public XtextResource parse() {
        return texts.parse(text);
    }
}
