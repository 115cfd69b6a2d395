package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One layout for all specs, so that a diff shows what was changed. */
class FormatCommandTest {

    private static final String RAGGED = "plug Box{units mm   half sections\nstation A at 0{0 0 100 0 knuckle\n100 50 knuckle 0 50}\nstation B at 400 like A}";

    @TempDir
    private Path folder;

    @Test void checkingNamesTheFileAndWritesNothing() {
        Path file = Specs.write(folder, "box.plug", RAGGED);
        assertThat(Run.in(folder, "format", "--check", "box.plug")).isEqualTo(new Run("box.plug\n", "", 1));
        assertThat(Specs.read(file)).isEqualTo(RAGGED);
    }

    @Test void layingOutChangesTheSpaceAloneAndASecondTimeNothing() throws Exception {
        Path file = Specs.write(folder, "box.plug", RAGGED);
        assertThat(Run.in(folder, "format", "box.plug")).isEqualTo(new Run("", "", 0));
        String laid = Specs.read(file);
        assertThat(laid).isNotEqualTo(RAGGED);
        assertThat(laid.replaceAll("\\s", "")).isEqualTo(RAGGED.replaceAll("\\s", ""));
        assertThat(Run.in(folder, "format", "--check", "box.plug").code()).isZero();
        Object before = Files.getAttribute(file, "lastModifiedTime");
        Run.in(folder, "format", "box.plug");
        assertThat(Files.getAttribute(file, "lastModifiedTime")).isEqualTo(before);
    }

    @Test void aTextThatCannotBeReadIsLeftAsItIs() {
        Path file = Specs.write(folder, "box.plug", RAGGED.replace("units", "unts"));
        Run run = Run.in(folder, "format", "box.plug");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("box.plug:1:10  error MW901");
        assertThat(Specs.read(file)).isEqualTo(RAGGED.replace("units", "unts"));
    }

    @Test void aFileThatIsNotThereIsAnError() {
        assertThat(Run.in(folder, "format", "box.plug").code()).isEqualTo(3);
    }

    @Test void aPropertyGivenTwiceIsToldAndTheFileLeftAsItIs() throws Exception {
        String twice = "plug P { day 7 h day 8 h }\n";
        Path file = Specs.write(folder, "twice.plug", twice);
        Run run = Run.in(folder, "format", "twice.plug");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("error MW909");
        assertThat(Files.readString(file)).isEqualTo(twice);
    }
}
