package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonParser;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Findings at the terminal and for build servers. */
class CheckCommandTest {

    @TempDir
    private Path folder;

    @Test void aSpecWithoutFindingsIsFine() {
        Specs.write(folder, "box.plug", Specs.BOX);
        assertThat(Run.in(folder, "check", "box.plug")).isEqualTo(new Run("no findings\n", "", 0));
    }

    @Test void aFindingHasItsPlaceItsLineAMarkAndAFix() {
        Specs.write(folder, "box.plug", Specs.BOX.replace("knuckle\n        100 50", "knukle\n        100 50"));
        Run run = Run.in(folder, "check", "box.plug");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).startsWith("box.plug:6:15  error MW901  ").contains("""
                    6 |         100 0 knukle
                      |               ^^^^^^
                   fix: write `knuckle`
                """).endsWith("1 error\n");
    }

    @Test void warningsFailOnlyWhenAskedTo() {
        Specs.write(folder, "box.plug", Specs.BOX.replace("at 400", "at 400,5"));
        assertThat(Run.in(folder, "check", "box.plug").code()).isZero();
        assertThat(Run.in(folder, "check", "--strict", "box.plug").code()).isEqualTo(1);
        assertThat(Run.in(folder, "check", "box.plug").out()).endsWith("1 warning\n");
    }

    @Test void severalFilesAreCountedTogetherAndOneThatCannotBeReadDoesNotHideTheOthers() {
        Specs.write(folder, "a/box.plug", Specs.BOX.replace("like A", "like Q"));
        Specs.write(folder, "b.plug", Specs.BOX);
        Run run = Run.in(folder, "check", "missing.plug", "a/box.plug", "b.plug");
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.out()).contains("missing.plug:1:1  error MW990", "a/box.plug:10:").endsWith("2 errors\n");
    }

    @Test void buildServersGetAnArrayOfFindings() {
        Specs.write(folder, "box.plug", Specs.BOX.replace("like A", "like Q"));
        Run run = Run.in(folder, "check", "--format", "json", "box.plug");
        JsonArray findings = JsonParser.parseString(run.out()).getAsJsonArray();
        assertThat(run.code()).isEqualTo(1);
        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).getAsJsonObject().get("file").getAsString()).isEqualTo("box.plug");
        assertThat(findings.get(0).getAsJsonObject().get("line").getAsInt()).isEqualTo(10);
        assertThat(findings.get(0).getAsJsonObject().get("severity").getAsString()).isEqualTo("error");
    }

    @Test void colourIsForTerminalsThatWantIt() {
        Specs.write(folder, "box.plug", Specs.BOX.replace("like A", "like Q"));
        assertThat(Run.with(new Cli(), folder, Map.of(), true, "check", "box.plug").out()).contains("\u001b[1;31merror");
        assertThat(Run.with(new Cli(), folder, Map.of("NO_COLOR", "1"), true, "check", "box.plug").out()).doesNotContain("\u001b");
        assertThat(Run.in(folder, "check", "box.plug").out()).doesNotContain("\u001b");
    }
}
