package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The table of offsets at the terminal, taken off a box whose sides are upright. */
class OffsetsCommandTest {

    @TempDir
    private Path folder;

    private Run run(String... options) {
        Specs.write(folder, "box.plug", Specs.BOX);
        String[] arguments = new String[options.length + 2];
        arguments[0] = "offsets";
        arguments[1] = "box.plug";
        System.arraycopy(options, 0, arguments, 2, options.length);
        return Run.in(folder, arguments);
    }

    @Test void aBoxHasOneHalfBreadthAtEveryHeight() { // closed form
        Run run = run("--every", "25mm");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).startsWith("surface,offsets in mm,A,B\n,position,0.0,400.0\n").contains("finished,waterline 25,100.0,100.0\n",
                "finished,buttock 50 lower,0.0,0.0\n", "finished,buttock 50 upper,50.0,50.0\n", "finished,girth,500.0,500.0\n");
    }

    @Test void boatbuildersReadFeetInchesAndEighths() { // 100 mm is 3.937 in, nearest 3 15/16; 400 mm is 1 ft 3 3/4 in
        assertThat(run("--every", "1in", "--units", "us").out()).contains(",position,0-0-0,1-3-6\n", "finished,waterline 0-1-0,0-3-7+,0-3-7+\n");
    }

    @Test void itIsWrittenToAFileWhereOneIsNamed() {
        Run run = run("--out", "box.csv");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).isEmpty();
        assertThat(Specs.read(folder.resolve("box.csv"))).startsWith("surface,offsets in mm");
    }

    @Test void aSpecIsNeverWrittenOver() {
        assertThat(run("--out", "box.plug").code()).isEqualTo(2);
        assertThat(Specs.read(folder.resolve("box.plug"))).isEqualTo(Specs.BOX);
    }

    @Test void plateOffsetsOfAPlugWithoutAFrameAreRefused() {
        Run run = run("--surface", "plate");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("it has no frame");
    }

    @Test void aDistanceWithoutAUnitIsRefused() {
        assertThat(run("--every", "25").err()).contains("50mm or 2in");
        assertThat(run("--every", "0mm").code()).isEqualTo(2);
        assertThat(run("--every", "0.01mm").err()).contains("too small");
    }

    @Test void onPaperTheTableIsTheSame() throws Exception { // as Poppler reads it
        Run run = run("--every", "25mm", "--format", "pdf", "--out", "box.pdf");
        assertThat(run.code()).as(run.err()).isZero();
        Process process = new ProcessBuilder("pdftotext", "-layout", folder.resolve("box.pdf").toString(), "-").redirectErrorStream(true).start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(text).isZero();
        assertThat(text).contains("Table of offsets", "Finished surface", "Stations A to B", "In mm.").containsPattern("position +0\\.0 +400\\.0").containsPattern("waterline 25 +100\\.0 +100\\.0")
                .containsPattern("girth +500\\.0 +500\\.0");
    }

    @Test void paperIsForPdfAlone() {
        assertThat(run("--paper", "a4").err()).contains("--paper is for --format pdf");
        Specs.write(folder, "box.plug", Specs.BOX);
        assertThat(Run.with(new Cli(), folder, Map.of(), true, "offsets", "box.plug", "--format", "pdf").err()).contains("--out offsets.pdf");
    }
}
