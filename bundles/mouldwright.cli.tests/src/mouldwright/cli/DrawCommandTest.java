package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What `draw` writes. */
class DrawCommandTest {

    @TempDir Path folder;

    @BeforeEach
    void start() throws Exception {
        Files.writeString(folder.resolve("box.plug"), """
                plug Box {
                    half sections
                    station A at 0 { 0 0  100 0 knuckle  100 50 knuckle  0 50 }
                    station B at 400 like A
                }
                """);
    }

    private List<String> files(String within) throws Exception {
        try (Stream<Path> files = Files.list(folder.resolve(within))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test void everythingThatCanBeDrawnIsAFileOfItsOwn() throws Exception {
        Run outcome = Run.in(folder, "draw", "box.plug", "--out", "seen");
        assertThat(outcome.code()).as(outcome.err()).isEqualTo(ExitCode.FINE);
        assertThat(files("seen")).containsExactly("Box-lines.svg", "Box-section-A.svg", "Box-section-B.svg");
    }

    @Test void onlyWhatIsAskedForIsDrawn() throws Exception {
        Run.in(folder, "draw", "box.plug", "--only", "lines", "--format", "pdf", "--out", "seen");
        assertThat(files("seen")).containsExactly("Box-drawings.pdf");
    }

    @Test void aPlanThatDoesNotComeThatFarIsSaidToHaveNone() {
        Run outcome = Run.in(folder, "draw", "box.plug", "--only", "programme");
        assertThat(outcome.code()).isEqualTo(ExitCode.ERRORS);
        assertThat(outcome.err()).contains("Box has no programme");
    }

    @Test void aSquareIsMeasuredOnPaperOfASize() {
        Run outcome = Run.in(folder, "draw", "box.plug", "--format", "pdf", "--measured", "99");
        assertThat(outcome.code()).isEqualTo(ExitCode.USAGE);
        assertThat(outcome.err()).contains("--measured needs --paper");
    }
}
