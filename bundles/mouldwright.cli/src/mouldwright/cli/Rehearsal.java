package mouldwright.cli;

import java.io.ByteArrayInputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import mouldwright.services.ProcessIo;

/** Runs the commonest commands once and prints nothing, so that a JVM that was asked for an archive of classes can write down which
 *  it took. Started by the start script, never by a user. */
public final class Rehearsal {

    private static final List<List<String>> COMMANDS = List.of(
            List.of("help"),
            List.of("help", "estimate"),
            List.of("check"),
            List.of("check", "--format", "json"),
            List.of("estimate"),
            List.of("estimate", "--format", "json"),
            List.of("offsets"),
            List.of("format", "--print"));

    private Rehearsal() { }

    /** @param arguments the spec the commands are tried on */
    public static void main(String[] arguments) {
        rehearse(Path.of(arguments[0]));
    }

    /** Runs them all on a spec.
     *  @return their exit codes */
    static List<Integer> rehearse(Path spec) {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        ProcessIo io = new ProcessIo(nowhere, nowhere, new ByteArrayInputStream(new byte[0]), Path.of(""), false, Map.of());
        return COMMANDS.stream().map(command -> new Cli().run(io, withSpec(command, spec))).toList();
    }

    private static String[] withSpec(List<String> command, Path spec) {
        return command.contains("help") ? command.toArray(String[]::new)
                : Stream.concat(command.stream(), Stream.of(spec.toString())).toArray(String[]::new);
    }
}
