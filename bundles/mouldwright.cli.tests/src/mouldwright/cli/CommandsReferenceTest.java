package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The reference of the commands is what they say of themselves. */
class CommandsReferenceTest {

    private static final Path REFERENCE = Path.of("../mouldwright.cli/reference/commands.md").toAbsolutePath().normalize();

    @TempDir
    private Path folder;

    private String made() {
        StringBuilder out = new StringBuilder("# Commands\n\nThe start script is `mouldwright`. Results go to standard output, everything else to standard error.\n\n```\n")
                .append(help("help")).append("```\n");
        for (Subcommand command : Cli.ALL)
            out.append("\n## ").append(command.name()).append("\n\n```\n").append(help("help", command.name())).append("```\n");
        return out.toString();
    }

    private String help(String... arguments) {
        Run run = Run.in(folder, arguments);
        assertThat(run.code()).isEqualTo(ExitCode.FINE);
        return run.out();
    }

    @Test void theReferenceIsMadeOfTheHelpOfEachCommand() throws IOException {
        String made = made();
        if (Boolean.getBoolean("mouldwright.golden.renew"))
            Files.writeString(REFERENCE, made);
        assertThat(Files.readString(REFERENCE)).isEqualTo(made);
    }
}
