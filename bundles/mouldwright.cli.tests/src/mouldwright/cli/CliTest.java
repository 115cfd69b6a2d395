package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import mouldwright.services.ProcessIo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** The command line as a whole; the exit codes are those the README states. */
class CliTest {

    @TempDir
    private Path folder;

    @Test void withoutACommandItSaysWhatThereIs() {
        Run run = Run.in(folder);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("check", "estimate", "explain", "format", "Exit codes");
    }

    @Test void helpIsAResult() {
        assertThat(Run.in(folder, "help")).satisfies(run -> {
            assertThat(run.code()).isZero();
            assertThat(run.out()).startsWith("Usage: mouldwright");
            assertThat(run.err()).isEmpty();
        });
        assertThat(Run.in(folder, "help", "estimate").out()).contains("--units=metric|us").isEqualTo(Run.in(folder, "estimate", "--help").out());
    }

    @Test void theVersionIsThatOfTheBundle() {
        Run run = Run.in(folder, "--version");
        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith("mouldwright ").hasLineCount(1);
    }

    @Test void aSlipInTheCommandIsToldWithTheNearestOne() {
        Run run = Run.in(folder, "estimte", "box.plug");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).isEqualTo("mouldwright: no command `estimte`; `estimate`?\nsee: mouldwright help\n");
    }

    @Test void wrongOptionsAreWrongUsage() {
        assertThat(Run.in(folder, "--loud").code()).isEqualTo(2);
        assertThat(Run.in(folder, "estimate").code()).isEqualTo(2);
        assertThat(Run.in(folder, "estimate", "--format", "docx", "box.plug").err()).contains("'docx' is none of text, json, csv");
        assertThat(Run.in(folder, "check", "--quick", "box.plug").err()).contains("--quick").contains("see: mouldwright help check");
        assertThat(Run.in(folder, "estimate", "a.plug", "b.plug").code()).isEqualTo(2);
        assertThat(Run.in(folder, "explain", "a.plug").code()).isEqualTo(2);
    }

    @Test void aFileWhoseNameBeginsWithAnAtSignIsAFile() { // and no list of arguments
        Specs.write(folder, "@args", "--version");
        assertThat(Run.in(folder, "check", "@args").out()).contains("@args:1:");
    }

    @Test void aPathWithAZeroInItIsWrongUsage() {
        assertThat(Run.in(folder, "check", "a\0b.plug").code()).isEqualTo(2);
    }

    @Test void anInternalFaultLeavesAReportAndOneLine() throws Exception {
        Run run = Run.with(new Cli(List.of(new Failing())), folder, Map.of(), false, "fail", "now");
        assertThat(run.code()).isEqualTo(70);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("mouldwright: internal fault").hasLineCount(1).doesNotContain("\tat ");
        Path report = Path.of(run.err().strip().substring(run.err().indexOf("the report is ") + "the report is ".length()));
        assertThat(Files.readString(report)).contains("arguments [fail, now]", "a bolt sheared", "\tat mouldwright.cli.CliTest");
        Files.delete(report);
    }

    /** A command with a fault in it. */
    private static final class Failing implements Subcommand {
        @Override
        public String name() {
            return "fail";
        }

        @Override
        public String summary() {
            return "fails";
        }

        @Override
        public void describe(CommandSpec spec) {
            spec.addPositional(Options.files("anything"));
        }

        @Override
        public int run(ParseResult parsed, ProcessIo io) {
            throw new IllegalStateException("a bolt sheared");
        }
    }
}
