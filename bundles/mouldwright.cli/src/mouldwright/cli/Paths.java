package mouldwright.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import mouldwright.services.ProcessIo;

/** Paths as they are typed. */
final class Paths {

    private Paths() { }

    /** Seen from the working folder.
     *  @throws WrongUsage if it is no path on this system */
    static Path of(String written, ProcessIo io) {
        try {
            return io.path(written);
        } catch (InvalidPathException e) {
            throw new WrongUsage("no path: " + written);
        }
    }
}
