package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Tables and drawings that are wrong: one finding with its place and a way out, no stack trace, nothing written and nothing read outside. */
class BadOffsetsTest {

    private static final String LINE = "0\nLINE\n8\nA\n10\n0\n20\n0\n11\n1\n21\n1\n";

    @TempDir
    private Path folder;

    private static String drawing(String unit, String entities) {
        return "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n" + unit + "\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n" + entities + "0\nENDSEC\n0\nEOF\n";
    }

    static Stream<Arguments> drawings() {
        return Stream.of(
                Arguments.of("a block", drawing("4", "0\nINSERT\n8\nA\n2\nB\n10\n0\n20\n0\n"), "INSERT: it is not read", "explode the block"),
                Arguments.of("a polyline in space", drawing("4", "0\nPOLYLINE\n8\nA\n70\n8\n0\nVERTEX\n8\nA\n10\n0\n20\n0\n30\n0\n0\nVERTEX\n8\nA\n10\n9\n20\n0\n30\n5\n0\nSEQEND\n"),
                        "polyline in space", "in the plane of the drawing"),
                Arguments.of("no units", drawing("0", LINE), "does not say what its lengths are in", "--units mm"),
                Arguments.of("a hundred thousand and one entities", drawing("4", LINE.repeat(100_001)), "more than 100000 entities", "save the sections alone"),
                Arguments.of("a file that was cut off", drawing("4", LINE).replace("EOF\n", ""), "ends", "it was cut off"),
                Arguments.of("a binary drawing", "AutoCAD Binary DXF\r\n\u001a\0\0\0", "is not text", "save it as text"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("drawings")
    void aWrongDrawingHasItsFindingAndItsRemedy(String what, String text, String words, String remedy) {
        Specs.write(folder, "d.dxf", text);
        Run run = Run.in(folder, "import", "d.dxf", "--every", "300mm", "--out", "d.plug");
        assertThat(run.code()).as(run.err()).isIn(1, 3);
        assertThat(run.err()).startsWith("d.dxf:").contains("error MW", words, remedy).doesNotContain("Exception", "\tat ");
        assertThat(run.err().lines().filter(line -> line.contains(" error MW"))).hasSize(1);
        assertThat(Files.exists(folder.resolve("d.plug"))).isFalse();
    }

    /** A million entities are more than a file may be long, and are not even read. */
    @Test void aDrawingOfAMillionEntitiesIsRefusedByItsLength() throws IOException {
        Files.writeString(folder.resolve("d.dxf"), drawing("4", LINE.repeat(1_000_000)), StandardCharsets.US_ASCII);
        assertThat(Run.in(folder, "import", "d.dxf", "--every", "300mm").err()).contains("d.dxf", "larger than 20");
    }

    @Test void aLayerThatIsNotThereIsAnsweredWithTheNearest() {
        Specs.write(folder, "d.dxf", drawing("4", LINE));
        Specs.write(folder, "p.plug", "plug P { units mm half sections station A at 0 drawing \"d.dxf\" layer \"B\" station B at 300 like A }\n");
        assertThat(Run.in(folder, "check", "p.plug").out()).contains("MW151", "nothing lies on a layer `B` in d.dxf; `A`?");
    }

    @Test void nothingIsReadOutsideTheProject() throws IOException {
        Path inside = Files.createDirectory(folder.resolve("project"));
        Specs.write(folder, "secret.csv", "station,y,z\nA,0,424242\n");
        Files.createSymbolicLink(inside.resolve("link.csv"), folder.resolve("secret.csv"));
        for (String path : new String[] {"../secret.csv", folder.resolve("secret.csv").toString(), "link.csv"}) {
            Specs.write(inside, "p.plug", "plug P { units mm half sections station A at 0 table \"" + path + "\" column \"A\" station B at 300 like A }\n");
            Run run = Run.in(inside, "check", "p.plug");
            assertThat(run.code()).isEqualTo(1);
            assertThat(run.out()).contains("p.plug:1:", "error MW150").containsPattern("leads out of the|is an absolute path").doesNotContain("424242");
        }
    }

    static Stream<Arguments> tables() {
        return Stream.of(
                Arguments.of("a ragged row", "station,y,z\nA,0,0\nA,10,20,30,40\n", "row 3: it has 5 cells", "one cell a heading"),
                Arguments.of("words where a figure belongs", "station,y,z\nA,0,ten\nA,5,5\n", "cell C2: `ten` is no figure", "put a number there"),
                Arguments.of("a formula", "station,y,z\nA,=B1,0\nA,5,5\n", "cell B2: `=B1` is a formula", "save the table with its values"),
                Arguments.of("a station twice", "offsets in mm,A,A\nposition,0,100\nheight of keel,0,0\n", "two stations are called A", "rename one of them"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("tables")
    void aWrongTableHasItsFindingByRowAndColumn(String what, String text, String words, String remedy) {
        Specs.write(folder, "t.csv", text);
        Run run = Run.in(folder, "import", "t.csv", "--units", "mm", "--every", "300mm", "--out", "t.plug");
        assertThat(run.code()).as(run.err()).isEqualTo(1);
        assertThat(run.err()).startsWith("t.csv:").contains("error MW150", words, remedy).doesNotContain("Exception");
        assertThat(Files.exists(folder.resolve("t.plug"))).isFalse();
    }
}
