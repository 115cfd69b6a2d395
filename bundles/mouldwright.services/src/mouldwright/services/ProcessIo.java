package mouldwright.services;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;

/**
 * What a program has of the process it runs in, so that a test can give it another one.
 *
 * @param out         results, in UTF-8
 * @param err         everything else, in UTF-8
 * @param in          what is fed to it
 * @param directory   working folder, absolute; relative paths are seen from it
 * @param terminal    whether results go to a terminal
 * @param environment variables of the environment
 */
public record ProcessIo(PrintStream out, PrintStream err, InputStream in, Path directory, boolean terminal, Map<String, String> environment) {

    /** Refuses missing parts. */
    public ProcessIo {
        Objects.requireNonNull(out, "out");
        Objects.requireNonNull(err, "err");
        Objects.requireNonNull(in, "in");
        directory = directory.toAbsolutePath().normalize();
        environment = Map.copyOf(environment);
    }

    /** A path as written on the command line, absolute and normal.
     *  @throws java.nio.file.InvalidPathException if it is no path */
    public Path path(String written) {
        return directory.resolve(written).normalize();
    }
}
