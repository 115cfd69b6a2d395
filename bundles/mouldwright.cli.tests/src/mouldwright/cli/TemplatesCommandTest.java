package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What `templates` writes. */
class TemplatesCommandTest {

    private static final String BOX = """
            sheet Ply { size 1220 mm by 2440 mm thickness 12 mm density 695 kg/m3 }
            plug Box {
                units mm
                half sections
                station A at 0 { 0 0  100 0 knuckle  100 50 knuckle  0 50 }
                station B at 400 like A
                frame { sheet Ply }
            }
            """;

    @TempDir Path folder;

    @BeforeEach
    void start() throws Exception {
        Files.writeString(folder.resolve("box.plug"), BOX);
    }

    private List<String> files(String within) throws Exception {
        try (Stream<Path> files = Files.list(folder.resolve(within))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test void machinesGetAFileForEachPlate() throws Exception {
        Run outcome = Run.in(folder, "templates", "box.plug", "--format", "dxf", "--out", "cut");
        assertThat(outcome.code()).as(outcome.err()).isEqualTo(ExitCode.FINE);
        assertThat(files("cut")).contains("Box-plate.A.dxf", "Box-plate.B.dxf");
        assertThat(outcome.out()).contains("200 by   50 mm");
    }

    @Test void gaugesForTheMiddleOfEachBayComeWhenAskedFor() throws Exception {
        Run.in(folder, "templates", "box.plug", "--gauges", "--format", "svg", "--out", "gauges");
        Run.in(folder, "templates", "box.plug", "--format", "svg", "--out", "plain");
        assertThat(files("gauges")).hasSizeGreaterThan(files("plain").size()).anyMatch(name -> name.contains("gauge"));
    }

    @Test void aPrinterGetsOneFileForAll() throws Exception {
        Run.in(folder, "templates", "box.plug", "--out", "print");
        assertThat(files("print")).containsExactly("Box-templates.pdf");
    }

    @Test void aSquareThatIsFarOffIsRefusedAsAnotherScale() {
        Run outcome = Run.in(folder, "templates", "box.plug", "--measured", "50");
        assertThat(outcome.code()).isEqualTo(ExitCode.USAGE);
        assertThat(outcome.err()).contains("print at 100 % and measure again");
    }

    @Test void aPlugWithoutAFrameIsToldWhatItLacks() throws Exception {
        Files.writeString(folder.resolve("box.plug"), BOX.replace("frame { sheet Ply }", ""));
        Run outcome = Run.in(folder, "templates", "box.plug");
        assertThat(outcome.code()).isEqualTo(ExitCode.ERRORS);
        assertThat(outcome.err()).contains("add `frame { sheet NAME }`");
    }

    @Test void aPlateInTheWrongUnitIsRefusedBeforeAnythingIsWritten() throws Exception {
        Files.writeString(folder.resolve("box.plug"), BOX.replace("units mm", "units m").replace("1220 mm by 2440 mm", "500 m by 500 m"));
        Run outcome = Run.in(folder, "templates", "box.plug", "--out", "print");
        assertThat(outcome.code()).isEqualTo(ExitCode.ERRORS);
        assertThat(outcome.err()).containsPattern("Plate A takes \\d+ pages of a4, 400 at most: print on a roll .--paper roll., or look at the unit");
        assertThat(folder.resolve("print")).doesNotExist();
    }

    @Test void aFileThatCannotBeWrittenIsNamedWithHowManyWereBefore() throws Exception {
        Files.createDirectories(folder.resolve("cut/Box-plate.B.dxf"));
        Run outcome = Run.in(folder, "templates", "box.plug", "--format", "dxf", "--out", "cut");
        assertThat(outcome.code()).isEqualTo(ExitCode.FILE);
        assertThat(outcome.err()).contains("Box-plate.B.dxf is not written").contains("1 of 2 files were written before it");
    }
}
