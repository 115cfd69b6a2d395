package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** How a figure came about, asked for at the terminal. */
class ExplainCommandTest {

    private static final Path EXAMPLES = Path.of("../../examples").toAbsolutePath().normalize();

    @Test void foamIsFollowedDownToTheLibraryAndTheDefaults() {
        Run run = Run.in(EXAMPLES, "explain", "ten-lines/hatch.plug", "fill.mass");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).startsWith("Foam, mass").contains("stock/foam.plug:", "| density", "assumed: ", "isocyanate");
    }

    @Test void aShapeIsFollowedDownToTheLinesOfTheSpec() {
        assertThat(Run.in(EXAMPLES, "explain", "box/box.plug", "shape.length").out()).contains("box/box.plug:", "| station");
    }

    @Test void anIdThatIsNotThereIsToldWithItsNeighbours() {
        Run run = Run.in(EXAMPLES, "explain", "ten-lines/hatch.plug", "fill.mas");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("no quantity `fill.mas`", "nearest: fill.mass, ");
    }

    @Test void aSpecWithErrorsExplainsNothing() {
        Run run = Run.in(EXAMPLES, "explain", "no-such.plug", "fill.mass");
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
    }

    @Test void aCodeAloneIsExplainedByItsPage() {
        assertThat(Run.in(EXAMPLES, "explain", "MW412").out()).startsWith("MW412  Crown between stations over the limit\n\nCause\n");
        assertThat(Run.in(EXAMPLES, "explain", "MW499").code()).isEqualTo(2);
        assertThat(Run.in(EXAMPLES, "explain", "box/box.plug").err()).contains("missing required parameter: 'ID'");
    }
}
