package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is fed to it: one clear finding at its place, the right exit code, and never a stack trace. */
class BadInputTest {

    private static final String FOAM = """
            library stock.foam
            foam Pour36 {
                expansion 32 from 28 to 33
                density 36 kg/m3
                ratio 100 to 100 by volume
                parts 1.12 kg/l and 1.22 kg/l
            }
            """;

    @TempDir
    private Path folder;

    private static String box(String from, String to) {
        assertThat(Specs.BOX).contains(from);
        return Specs.BOX.replace(from, to);
    }

    private static String boxWith(String lines) {
        return box("    station A", "    " + lines.indent(4).strip() + "\n    station A");
    }

    /** What is wrong; the text; exit code of estimate; the start of the finding (its line); some of its words. */
    static Stream<Arguments> wrongTexts() {
        return Stream.of(
                Arguments.of("an unknown unit", box("at 400", "at 400 mn"), 1, "spec.plug:10:", "mn"),
                Arguments.of("a unit of another kind", box("at 400", "at 400 g/m2"), 1, "spec.plug:10:", "length expected, 400 g/m2 is a mass per area"),
                Arguments.of("a number beyond all reason", box("at 400", "at 1e308"), 1, "spec.plug:10:", "1e308"),
                Arguments.of("a number beyond what a double holds", box("at 400", "at 1e999"), 1, "spec.plug:10:", "1e999"),
                Arguments.of("a negative shell", "use stock.foam\n" + boxWith("fill Pour36 shell -20 { }"), 1, "spec.plug:5:", "shell"),
                Arguments.of("a negative pot", "use stock.foam\n" + boxWith("fill Pour36 solid { overfill -5 }"), 1, "spec.plug:5:", "overfill"),
                Arguments.of("one station", box("    station B at 400 like A\n", ""), 1, "spec.plug:", "station"),
                Arguments.of("stations out of order", box("at 400 like A", "at 400 like A\n    station C at 200 like A"), 1, "spec.plug:11:", "C"),
                Arguments.of("two stations at one place", box("at 400", "at 0"), 1, "spec.plug:10:", "B"),
                Arguments.of("an outline that crosses itself", box("100 50 knuckle\n        0 50", "0 50 knuckle\n        100 50 knuckle\n        0 20"), 1,
                        "spec.plug:4:", "cross"),
                Arguments.of("lines that do not match", boxWith("line chine").replace("100 0 knuckle", "100 0 knuckle chine")
                        .replace("like A", "{\n        0 0\n        100 0 knuckle\n        100 50 knuckle\n        0 50\n    }"), 1, "spec.plug:", "chine"),
                Arguments.of("a library that is not there", "use stock.missing\n" + Specs.BOX, 1, "spec.plug:1:", "no library stock.missing"),
                Arguments.of("a schedule that includes itself", """
                        schedule A { include B }
                        schedule B { include A }
                        """ + Specs.BOX, 1, "spec.plug:1:", "includes itself"),
                Arguments.of("a formula of mixed dimensions", box("at 400", "at (400 mm + 3 kg)"), 1, "spec.plug:10:", "mass"),
                Arguments.of("a division by nothing", box("at 400", "at (400 mm / 0)"), 1, "spec.plug:10:", "0"),
                Arguments.of("a named amount that rests on itself", boxWith("let a = (b + 1 mm)\nlet b = (a + 1 mm)").replace("at 400", "at (a)"), 1,
                        "spec.plug:", "itself"),
                Arguments.of("a station like itself", box("station B at 400 like A", "station B at 400 like B"), 1, "spec.plug:10:", "B"),
                Arguments.of("a point with one value", box("100 50 knuckle", "100 knuckle"), 1, "spec.plug:7:", ""),
                Arguments.of("a word that is none", box("half sections", "half sectons"), 1, "spec.plug:3:", "sections"),
                Arguments.of("a block that is not closed", Specs.BOX.strip().substring(0, Specs.BOX.strip().length() - 1), 1, "spec.plug:", "}"),
                Arguments.of("a text that is no spec", "Dear all,\nplease find the drawings attached.\n", 1, "spec.plug:1:", ""),
                Arguments.of("nothing but a brace", "}", 1, "spec.plug:1:", ""));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("wrongTexts")
    void aWrongTextHasItsFinding(String what, String text, int code, String place, String words) {
        Specs.write(folder, "stock/foam.plug", FOAM);
        Specs.write(folder, "spec.plug", text);
        Run run = Run.in(folder, "estimate", "spec.plug");
        assertThat(run.code()).as("%s: %s", what, run).isEqualTo(code);
        assertThat(run.out()).as(what).isEmpty();
        assertThat(run.err()).as(what).startsWith(place).contains(words).contains("error MW").contains("^").doesNotContain("Exception").doesNotContain("\tat ");
        assertThat(run.err().lines().filter(line -> line.contains(" error MW"))).as("%s: %s", what, run.err()).hasSizeLessThanOrEqualTo(2);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("wrongTexts")
    void checkTellsTheSameAndFailsToo(String what, String text, int code, String place, String words) {
        Specs.write(folder, "stock/foam.plug", FOAM);
        Specs.write(folder, "spec.plug", text);
        Run run = Run.in(folder, "check", "spec.plug");
        assertThat(run.code()).as(what).isEqualTo(1);
        assertThat(run.out()).as(what).startsWith(place);
    }

    @Test void numbersWithAnExponentAreRead() { // 4.0e2 mm is 400 mm
        Specs.write(folder, "spec.plug", box("at 400", "at 4.0e2"));
        assertThat(Run.in(folder, "estimate", "spec.plug").out()).containsPattern("Length +400 +mm").contains("none");
    }

    @Test void aDecimalCommaIsReadAndSaid() {
        Specs.write(folder, "spec.plug", box("at 400", "at 400,5"));
        Run run = Run.in(folder, "estimate", "spec.plug", "--format", "json");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("\"value\": 0.4005", "MW908");
    }

    @Test void anEmptyFileHasNothingToEstimate() {
        Specs.write(folder, "spec.plug", "");
        assertThat(Run.in(folder, "check", "spec.plug")).satisfies(run -> {
            assertThat(run.code()).isZero();
            assertThat(run.out()).startsWith("spec.plug:1:1  warning MW992  there is nothing in this file");
        });
        Run run = Run.in(folder, "estimate", "spec.plug");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).startsWith("mouldwright: no plug in spec.plug: the file is empty");
    }

    @Test void aBinaryFileIsNotRead() throws IOException {
        Files.write(folder.resolve("photo.plug"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 0, 1});
        assertUnread("photo.plug", "not text");
    }

    @Test void aTextInAnotherEncodingIsToldWithTheLine() throws IOException {
        Files.write(folder.resolve("latin.plug"), "// Bo\u00eete\n".getBytes(StandardCharsets.ISO_8859_1));
        assertUnread("latin.plug", "not UTF-8", "line 1", "save it as UTF-8");
        Files.write(folder.resolve("wide.plug"), Specs.BOX.getBytes(StandardCharsets.UTF_16));
        assertUnread("wide.plug", "UTF-16");
    }

    @Test void aByteOrderMarkAndForeignLineEndsDoNotMatter() {
        Specs.write(folder, "spec.plug", "\ufeff" + Specs.BOX.replace("\n", "\r\n"));
        assertThat(Run.in(folder, "estimate", "spec.plug").code()).isZero();
        Specs.write(folder, "spec.plug", "\ufeff" + box("at 400", "at 400 mn").replace("\n", "\r\n"));
        assertThat(Run.in(folder, "estimate", "spec.plug").err()).startsWith("spec.plug:10:").contains("10 |     station B at 400 mn like A\n");
    }

    @Test void aFolderInPlaceOfAFileIsNotRead() throws IOException {
        Files.createDirectory(folder.resolve("spec.plug"));
        assertUnread("spec.plug", "it is a folder");
    }

    @Test void aFileThatIsNotThereIsNotRead() {
        assertUnread("spec.plug", "there is no such file");
    }

    @Test void aFileThatMayNotBeReadIsNotRead() throws IOException {
        Path file = Specs.write(folder, "spec.plug", Specs.BOX);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
        if (Files.isReadable(file)) { // whoever may read everything gets the next best thing
            Files.delete(file);
            Files.createSymbolicLink(file, file);
            assertUnread("spec.plug", "is not read");
        } else {
            assertUnread("spec.plug", "it may not be read");
        }
    }

    @Test void aTableOfAHundredThousandLinesIsReadOrRefusedInWords() {
        StringBuilder text = new StringBuilder("plug Long {\n    units mm\n    half sections\n    station A at 0 {\n");
        IntStream.range(0, 100_000).forEach(i -> text.append("        ").append(i == 0 ? 0 : 100 + i * 1e-3).append(' ').append(i).append('\n'));
        text.append("    }\n    station B at 400 like Q\n}\n");
        Specs.write(folder, "spec.plug", text.toString());
        Run run = Run.in(folder, "check", "spec.plug");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("spec.plug:100006:27  error MW902  no station is called `Q`");
    }

    private void assertUnread(String name, String... words) {
        for (String command : new String[] {"estimate", "check"}) {
            Run run = Run.in(folder, command, name);
            assertThat(run.code()).as("%s %s", command, run).isEqualTo(3);
            assertThat(run.out() + run.err()).startsWith(name + ":1:1  error MW990  ").contains(words).doesNotContain("Exception").hasLineCount(2);
        }
    }
}
