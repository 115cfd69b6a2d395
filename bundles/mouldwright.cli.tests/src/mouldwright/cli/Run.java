package mouldwright.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import mouldwright.services.ProcessIo;

/** A command as the shell would run it, and what came of it. */
record Run(String out, String err, int code) {

    static Run in(Path folder, String... arguments) {
        return with(new Cli(), folder, Map.of(), false, arguments);
    }

    static Run with(Cli cli, Path folder, Map<String, String> environment, boolean terminal, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = cli.run(new ProcessIo(new PrintStream(out, false, StandardCharsets.UTF_8), new PrintStream(err, false, StandardCharsets.UTF_8),
                new ByteArrayInputStream(new byte[0]), folder, terminal, environment), arguments);
        return new Run(out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8), code);
    }

    List<String> all() {
        return (out + err).lines().toList();
    }
}
