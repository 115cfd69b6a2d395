package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RehearsalTest {

    @TempDir
    private Path folder;

    @Test void everyCommandOfTheRehearsalIsOneAndGoesThrough() throws Exception { // one that is refused would leave its classes out of the archive
        Path spec = Specs.write(folder, "box.plug", Specs.BOX);
        assertThat(Rehearsal.rehearse(spec)).isNotEmpty().containsOnly(ExitCode.FINE);
    }
}
