package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The main job: the build plan of a spec. */
class EstimateCommandTest {

    private static final Path EXAMPLES = Path.of("../../examples").toAbsolutePath().normalize();

    @TempDir
    private Path folder;

    @Test void aBoxOfTwoHundredByFiftyByFourHundredHoldsFourLitres() { // closed form
        Specs.write(folder, "box.plug", Specs.BOX);
        Run run = Run.in(folder, "estimate", "box.plug");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).startsWith("Box   A box\n").containsPattern("Volume +4\\.00 +l +shape\\.volume").contains("none");
    }

    @Test void anEstimateInJsonIsAsItsSchemaSays() throws Exception { // JSON Schema 2020-12
        Run run = Run.in(EXAMPLES, "estimate", "--format", "json", "ten-lines/hatch.plug");
        assertThat(run.code()).as(run.err()).isZero();
        try (InputStream in = mouldwright.report.Estimate.class.getResourceAsStream("/schema/estimate.schema.json")) {
            assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8)).validate(run.out(), InputFormat.JSON)).isEmpty();
        }
        JsonObject estimate = JsonParser.parseString(run.out()).getAsJsonObject();
        assertThat(estimate.getAsJsonArray("pours")).isNotEmpty();
        assertThat(estimate.getAsJsonArray("pots")).isNotEmpty();
    }

    @Test void theSameSpecGivesTheSameBytesInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            Run here = Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug");
            Run json = Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug", "--format=json");
            Locale.setDefault(Locale.forLanguageTag("de-DE"));
            assertThat(Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug")).isEqualTo(here);
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertThat(Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug", "--format=json")).isEqualTo(json);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test void theSameSpecGivesTheSameBytesEachTimeToTheLastDigit() { // of cavities too, which are cut out of one another
        Run once = Run.in(EXAMPLES, "estimate", "rain-canopy/canopy.plug", "--format=json");
        assertThat(Run.in(EXAMPLES, "estimate", "rain-canopy/canopy.plug", "--format=json")).isEqualTo(once);
    }

    @Test void withErrorsThereAreFindingsAndNoFigures() {
        Specs.write(folder, "box.plug", Specs.BOX.replace("like A", "like Q"));
        Run run = Run.in(folder, "estimate", "box.plug");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("box.plug:10:").contains("^").endsWith("1 error\n");
    }

    @Test void severalPlugsWantOneNamed() {
        Specs.write(folder, "two.plug", Specs.BOX + Specs.BOX.replace("plug Box", "plug Crate").replace("at 400", "at 800"));
        Run both = Run.in(folder, "estimate", "two.plug");
        assertThat(both.code()).isEqualTo(2);
        assertThat(both.err()).contains("--plug Box|Crate");
        assertThat(Run.in(folder, "estimate", "two.plug", "--plug", "Crate").out()).startsWith("Crate").containsPattern("Volume +8\\.00 +l");
        assertThat(Run.in(folder, "estimate", "two.plug", "--plug", "Crat").err()).contains("`Crate`?");
    }

    @Test void aLibraryHasNoPlugToEstimate() {
        Specs.write(folder, "lib.plug", "library lib\n");
        Run run = Run.in(folder, "estimate", "lib.plug");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).startsWith("mouldwright: no plug in lib.plug");
    }

    @Test void oneStageAloneOrTheNamesOfThoseThereAre() {
        assertThat(Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug", "--stage", "fill").out()).contains("fill.mass").doesNotContain("shape.volume");
        Run wrong = Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug", "--stage", "paint");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err()).contains("shape, fill, skin");
    }

    @Test void figuresMayBeInUsUnitsByOptionOrByProject() {
        Specs.write(folder, "box.plug", Specs.BOX);
        String us = Run.in(folder, "estimate", "box.plug", "--units", "us").out();
        assertThat(us).containsPattern("Length +15\\.7 +in"); // 400 mm
        Specs.write(folder, "mouldwright.project", "units = us\n");
        assertThat(Run.in(folder, "estimate", "box.plug").out()).isEqualTo(us);
        assertThat(Run.in(folder, "estimate", "box.plug", "--units", "metric").out()).containsPattern("Length +400 +mm");
    }

    @Test void aTableOfFiguresComesWithTheCautionsBesideIt() { // a table has no room for them
        Run run = Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug", "--format", "csv");
        assertThat(run.out()).startsWith("id,stage,label,value,low,high,unit\n").contains("\nfill.mass,fill,\"Foam, mass\",");
        assertThat(run.err()).contains("isocyanate", "no permission");
    }

    @Test void aWorkbookIsNotSentToATerminal() {
        Run shown = Run.with(new Cli(), EXAMPLES, java.util.Map.of(), true, "estimate", "ten-lines/hatch.plug", "--format", "xlsx");
        assertThat(shown.code()).isEqualTo(2);
        assertThat(shown.err()).contains("a terminal cannot show xlsx", "--out plan.xlsx");
        assertThat(shown.out()).isEmpty();
    }

    @Test void papersAreWrittenToFiles() throws Exception {
        for (String format : new String[] {"html", "pdf", "xlsx"}) {
            Path file = folder.resolve("plan." + format);
            assertThat(Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug", "--format", format, "--out", file.toString())).isEqualTo(new Run("", "", 0));
            byte[] once = Files.readAllBytes(file);
            Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug", "--format", format, "--out", file.toString());
            assertThat(Files.readAllBytes(file)).as(format).isNotEmpty().isEqualTo(once);
        }
        assertThat(Files.readString(folder.resolve("plan.html"))).contains("<title>Hatch, build plan", "fill.mass.a");
    }

    @Test void theSameSeedGivesTheSameBytes() {
        Run once = Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug", "--draws", "100", "--seed", "7", "--format", "json");
        assertThat(once.out()).contains("\"p90\":", "\"seed\": \"7\"");
        assertThat(Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug", "--draws=100", "--seed=7", "--format=json")).isEqualTo(once);
        assertThat(Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug", "--draws=100", "--seed=8", "--format=json").out()).isNotEqualTo(once.out().replace("\"7\"", "\"8\""));
    }

    @Test void drawsSayHowMuchIsEnoughNineTimesInTen() {
        assertThat(Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug", "--draws", "100").out()).contains("100 draws of ", "90 %", "90 % sure");
    }

    @Test void drawsThatMakeNoSenseAreWrongUsage() {
        assertThat(Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug", "--draws", "5")).matches(run -> run.code() == 2 && run.err().contains("10 to 100000"));
        assertThat(Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug", "--draws", "many")).matches(run -> run.code() == 2 && run.err().contains("`many`"));
        assertThat(Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug", "--seed", "5")).matches(run -> run.code() == 2 && run.err().contains("--draws"));
    }

    @Test void thePiecesOfMatAreATableOfTheirOwn() {
        assertThat(Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug", "--format", "csv", "--table", "pieces").out())
                .startsWith("piece,ply,mat,where,width,length,roll,cut,along,across,laminate\n1,1,");
        assertThat(Run.in(EXAMPLES, "estimate", "ten-lines/hatch.plug", "--table", "pieces").code()).isEqualTo(2);
    }

    @Test void aFileIsWrittenWholeOrNotAtAll() throws Exception {
        Specs.write(folder, "box.plug", Specs.BOX);
        Path out = folder.resolve("plan.json");
        Files.writeString(out, "old");
        assertThat(Run.in(folder, "estimate", "box.plug", "--format", "json", "--out", "plan.json")).isEqualTo(new Run("", "", 0));
        assertThat(JsonParser.parseString(Specs.read(out)).getAsJsonObject().get("plug").getAsString()).isEqualTo("Box");
        Run nowhere = Run.in(folder, "estimate", "box.plug", "--out", "none/plan.txt");
        assertThat(nowhere.code()).isEqualTo(3);
        assertThat(nowhere.err()).startsWith("mouldwright: none/plan.txt is not written: ");
        try (var files = Files.list(folder)) {
            assertThat(files).hasSize(2);
        }
    }

    @Test void aSpecIsNeverWrittenOver() {
        Specs.write(folder, "box.plug", Specs.BOX);
        assertThat(Run.in(folder, "estimate", "box.plug", "--out", "box.plug").code()).isEqualTo(2);
        assertThat(Specs.read(folder.resolve("box.plug"))).isEqualTo(Specs.BOX);
    }

    @Test void theNameOfAStationMayCarryAnAccent() { // UTF-8 in and out
        Specs.write(folder, "box.plug", Specs.BOX.replace("station B", "station B\u00e9ta"));
        assertThat(Run.in(folder, "estimate", "box.plug").out()).contains("A-B\u00e9ta");
    }

    @Test void everyExampleThatIsAPlugCanBeEstimated() {
        for (String example : new String[] {"box/box.plug", "ten-lines/hatch.plug", "nacelle-cowl/cowl.plug", "rain-canopy/canopy.plug", "wheel-fairing/fairing.plug", "tail-pod/pod.plug"}) {
            Run run = Run.in(EXAMPLES, "estimate", example);
            assertThat(run.code()).as(example + "\n" + run.err()).isZero();
            assertThat(run.out().lines()).as(example).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(120));
        }
    }
}
