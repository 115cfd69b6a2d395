package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import mouldwright.services.FileChanges;
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

    /** Members, levels and regions as the OASIS standard SARIF 2.1.0 has them (3.13, 3.14, 3.27, 3.30, 3.55), from memory. */
    @Test void buildServersGetASarifLogWithRulesPlacesAndFixes() {
        Specs.write(folder, "my box.plug", Specs.BOX.replace("at 400", "at 400,5"));
        JsonObject log = JsonParser.parseString(Run.in(folder, "check", "--format", "sarif", "my box.plug").out()).getAsJsonObject();
        assertThat(log.get("version").getAsString()).isEqualTo("2.1.0");
        JsonObject run = log.getAsJsonArray("runs").get(0).getAsJsonObject();
        JsonObject driver = run.getAsJsonObject("tool").getAsJsonObject("driver");
        JsonObject result = run.getAsJsonArray("results").get(0).getAsJsonObject();
        assertThat(driver.get("name").getAsString()).isEqualTo("Mouldwright");
        assertThat(driver.getAsJsonArray("rules").get(result.get("ruleIndex").getAsInt()).getAsJsonObject().get("id")).isEqualTo(result.get("ruleId"));
        assertThat(result.get("level").getAsString()).isEqualTo("warning");
        assertThat(result.getAsJsonObject("message").get("text").getAsString()).contains("decimal comma");
        JsonObject place = result.getAsJsonArray("locations").get(0).getAsJsonObject().getAsJsonObject("physicalLocation");
        assertThat(place.getAsJsonObject("artifactLocation").get("uri").getAsString()).isEqualTo("my%20box.plug");
        assertThat(place.getAsJsonObject("region").get("startLine").getAsInt()).isEqualTo(10);
        JsonObject change = result.getAsJsonArray("fixes").get(0).getAsJsonObject().getAsJsonArray("artifactChanges").get(0).getAsJsonObject();
        JsonObject replaced = change.getAsJsonArray("replacements").get(0).getAsJsonObject();
        assertThat(replaced.getAsJsonObject("insertedContent").get("text").getAsString()).isEqualTo("400.5");
        assertThat(replaced.getAsJsonObject("deletedRegion").get("endColumn").getAsInt() - replaced.getAsJsonObject("deletedRegion").get("startColumn").getAsInt()).isEqualTo(5);
        assertThat(run.get("columnKind").getAsString()).isEqualTo("utf16CodeUnits");
    }

    @Test void whatMayBeMendedUnaskedIsWrittenAndSaid() throws IOException {
        Path file = Specs.write(folder, "box.plug", Specs.BOX.replace("at 400", "at 400,5"));
        Run run = Run.in(folder, "check", "--fix", "box.plug");
        assertThat(run.out()).isEqualTo("no findings\n");
        assertThat(run.err()).startsWith("mended box.plug:10:").contains("MW908  write `400.5`");
        assertThat(Files.readString(file)).isEqualTo(Specs.BOX.replace("at 400", "at 400.5"));
        assertThat(Run.in(folder, "check", "--fix", "box.plug")).isEqualTo(new Run("no findings\n", "", 0));
    }

    @Test void whatSomebodyMeantIsNotMendedUnasked() throws IOException {
        String wrong = Specs.BOX.replace("like A", "like B1").replace("station A", "station B12");
        Path file = Specs.write(folder, "box.plug", wrong);
        Run.in(folder, "check", "--fix", "box.plug");
        assertThat(Files.readString(file)).isEqualTo(wrong);
    }

    @Test void whoWatchesIsToldWhatAnEditChanged() {
        Specs.write(folder, "box.plug", Specs.BOX);
        Iterator<Runnable> edits = List.<Runnable>of(() -> Specs.write(folder, "box.plug", Specs.BOX.replace("at 400", "at 500")),
                () -> Specs.write(folder, "box.plug", Specs.BOX.replace("at 400", "at 500").replace("like A", "like Q")),
                () -> Specs.write(folder, "box.plug", Specs.BOX.replace("at 400", "at 500"))).iterator();
        FileChanges changes = files -> {
            assertThat(files).contains(folder.resolve("box.plug").toAbsolutePath().normalize());
            if (!edits.hasNext()) {
                return false;
            }
            edits.next().run();
            return true;
        };
        Run run = Run.with(new Cli(List.of(new CheckCommand(() -> changes))), folder, Map.of(), false, "check", "--watch", "box.plug");
        assertThat(run.code()).isZero();
        // two faces of 200 by 100 mm and two of 200 by 50: girth of the moulded face, 100 mm longer
        assertThat(run.out().lines().toList()).element(0).isEqualTo("no findings");
        assertThat(run.out()).contains("moulded surface\n").contains("error MW902").endsWith("no findings\nBox: the same figures\n\n");
    }
}
