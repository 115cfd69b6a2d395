package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What changed between two specs, or two revisions of one. The repositories are made by git itself. */
class CompareCommandTest {

    private static final String LIBRARY = """
            library stock.wood version "1.0"
            sheet Ply { size 1220 mm by 2440 mm thickness 12 mm density 600 kg/m3 }
            """;
    private static final String BOX = """
            use stock.wood
            plug Box {
                units mm
                half sections
                station A at 0 { 0 0  100 0 knuckle  100 50 knuckle  0 50 }
                station B at 400 like A
                frame { sheet Ply }
            }
            """;

    @TempDir
    private Path folder;

    private void write(String name, String text) throws Exception {
        Files.createDirectories(folder.resolve(name).getParent());
        Files.writeString(folder.resolve(name), text);
    }

    private void git(String... arguments) throws Exception {
        String[] command = Stream.concat(Stream.of("git", "-c", "user.name=Tester", "-c", "user.email=tester@example.invalid", "-c", "init.defaultBranch=main"), Arrays.stream(arguments))
                .toArray(String[]::new);
        Process process = new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes());
        assertThat(process.waitFor()).as(said).isZero();
    }

    private void committed() throws Exception {
        write("mouldwright.project", "");
        write("stock/wood.plug", LIBRARY);
        write("box.plug", BOX);
        git("init", "-q");
        git("add", ".");
        git("commit", "-q", "-m", "A box");
    }

    @Test void aLongerBoxHoldsMoreByTheLengthItGained() throws Exception { // 0.2 m by 0.05 m by 0.1 m = 1 l, closed form
        committed();
        write("box.plug", BOX.replace("at 400", "at 500"));
        Run run = Run.in(folder, "compare", "HEAD:box.plug", "box.plug");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("+1.00 l volume").containsPattern("B +400 +500");
    }

    @Test void theLibraryOfThatRevisionIsReadToo() throws Exception {
        committed();
        write("stock/wood.plug", LIBRARY.replace("600 kg/m3", "720 kg/m3"));
        Run run = Run.in(folder, "compare", "HEAD:box.plug", "box.plug", "--format", "json");
        assertThat(run.code()).as(run.err()).isZero();
        JsonObject mass = figure(run.out(), "frame.mass");
        assertThat(mass.get("after").getAsDouble() / mass.get("before").getAsDouble()).isCloseTo(1.2, within(1e-9));
    }

    private static JsonObject figure(String json, String id) {
        for (JsonElement one : JsonParser.parseString(json).getAsJsonObject().getAsJsonArray("figures"))
            if (one.getAsJsonObject().get("id").getAsString().equals(id))
                return one.getAsJsonObject();
        throw new AssertionError(id + " has not changed");
    }

    @Test void aFileThatIsGoneTodayIsReadFromItsRevision() throws Exception {
        committed();
        git("mv", "box.plug", "crate.plug");
        assertThat(Run.in(folder, "compare", "HEAD:box.plug", "crate.plug").out()).contains("nothing that is built differs");
    }

    @Test void aFindingThatCameIsNamed() throws Exception {
        committed();
        write("box.plug", BOX.replace("frame { sheet Ply }", "frame { sheet Ply }\n    carve { board 300 }"));
        assertThat(Run.in(folder, "compare", "HEAD:box.plug", "box.plug").out()).contains("Findings that came").contains("board");
    }

    @Test void aPageIsWellFormedAndTakesNoNameForMarkup() throws Exception {
        write("a.plug", BOX.replace("use stock.wood\n", LIBRARY.lines().skip(1).findFirst().orElseThrow() + "\n"));
        write("b.plug", Files.readString(folder.resolve("a.plug")).replace("station B", "station C"));
        Run run = Run.in(folder, "compare", "a.plug", "b.plug", "--format", "html");
        assertThat(run.code()).as(run.err()).isZero();
        String xml = run.out().replace("<!DOCTYPE html>\n", "").replace("<meta charset=\"UTF-8\">", "");
        var document = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new java.io.ByteArrayInputStream(xml.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        assertThat(document.getElementsByTagName("table").getLength()).isPositive();
    }

    @Test void aRevisionThatIsNotThereIsSaidSo() throws Exception {
        committed();
        Run run = Run.in(folder, "compare", "v9:box.plug", "box.plug");
        assertThat(run.code()).isEqualTo(ExitCode.FILE);
        assertThat(run.err()).isEqualTo("mouldwright: v9:box.plug: there is no revision v9\n");
    }

    @Test void withoutARepositoryItIsSaidSo() throws Exception {
        write("box.plug", BOX);
        Run run = Run.in(folder, "compare", "HEAD:box.plug", "box.plug");
        assertThat(run.code()).isEqualTo(ExitCode.FILE);
        assertThat(run.err()).contains("no git repository");
    }

    @Test void anErrorInTheOldSpecIsShownAndNoFigures() throws Exception {
        write("mouldwright.project", "");
        write("stock/wood.plug", LIBRARY);
        write("box.plug", BOX.replace("sheet Ply", "sheet Plie"));
        git("init", "-q");
        git("add", ".");
        git("commit", "-q", "-m", "A box");
        write("box.plug", BOX);
        Run run = Run.in(folder, "compare", "HEAD:box.plug", "box.plug");
        assertThat(run.code()).isEqualTo(ExitCode.ERRORS);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("Plie");
    }

    @Test void gitShowsTheStationAChangeIsIn() throws Exception {
        committed();
        Files.copy(Path.of("../../examples/.gitattributes").toAbsolutePath().normalize(), folder.resolve(".gitattributes"));
        String pattern = Files.readString(Path.of("../../examples/git-setup.txt")).lines().filter(line -> line.startsWith("git config diff.plug.xfuncname ")).findFirst().orElseThrow()
                .replaceFirst("^git config diff.plug.xfuncname '", "").replaceFirst("'$", "");
        git("config", "diff.plug.xfuncname", pattern);
        write("box.plug", BOX.replace("station B at 400 like A", "station B at 400 {\n 0 0\n 100 0 knuckle\n 100 25\n 100 50 knuckle\n 50 50\n 0 50\n }"));
        git("commit", "-q", "-a", "-m", "Points");
        write("box.plug", Files.readString(folder.resolve("box.plug")).replace(" 50 50\n", " 51 50\n"));
        Process diff = new ProcessBuilder("git", "diff", "-U0").directory(folder.toFile()).start();
        assertThat(new String(diff.getInputStream().readAllBytes())).containsPattern("@@ .* @@ +station B at 400");
    }

    @Test void textsAreComparedInTheOneLayout() throws Exception {
        write("a.plug", BOX.replace("    ", " "));
        Run run = Run.in(folder, "format", "--print", "a.plug");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("    units mm\n");
        assertThat(Files.readString(folder.resolve("a.plug"))).contains("\n units mm\n");
    }
}
