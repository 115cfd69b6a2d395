package mouldwright.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import mouldwright.project.SafeWrite;
import mouldwright.project.WriteResult;
import mouldwright.report.PathNames;
import mouldwright.services.ProcessIo;
import picocli.CommandLine.ParseResult;

/** Hands over what a command made: to standard output, or to the file of {@code --out}. */
final class Delivery {

    private Delivery() { }

    /** The file of {@code --out}, if one is named.
     *  @throws WrongUsage if it would write over a spec */
    static Optional<Path> target(ParseResult parsed, Path spec, ProcessIo io) {
        Optional<Path> target = Options.value(parsed, "--out").map(written -> Paths.of(written, io));
        if (target.isPresent() && (target.get().equals(spec) || target.get().toString().endsWith(".plug"))) {
            throw new WrongUsage("--out would write over a spec: " + target.get().getFileName());
        }
        return target;
    }

    /** Refuses to send to a terminal what it cannot show.
     *  @param what    cannot be shown
     *  @param example of a file's name
     *  @throws WrongUsage if there is no {@code --out} and results go to a terminal */
    static void refuseTerminal(String what, String example, Optional<Path> target, ProcessIo io) {
        if (target.isEmpty() && io.terminal()) {
            throw new WrongUsage("a terminal cannot show " + what + ": name a file, such as --out " + example);
        }
    }

    /** Prints or writes a text. @return the exit code */
    static int of(String text, Optional<Path> target, ProcessIo io) {
        return of(text.getBytes(StandardCharsets.UTF_8), target, io);
    }

    /** Prints or writes bytes. @return the exit code */
    static int of(byte[] bytes, Optional<Path> target, ProcessIo io) {
        if (target.isEmpty()) {
            io.out().write(bytes, 0, bytes.length);
            return ExitCode.FINE;
        }
        return switch (SafeWrite.bytes(target.get(), bytes)) {
            case WriteResult.Written written -> ExitCode.FINE;
            case WriteResult.NotWritten(Path path, String message) -> {
                io.err().print("mouldwright: " + new PathNames(io.directory()).of(path) + " is not written: " + message + "\n");
                yield ExitCode.FILE;
            }
        };
    }
}
