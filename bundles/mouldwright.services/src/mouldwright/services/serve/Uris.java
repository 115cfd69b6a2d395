package mouldwright.services.serve;

import java.net.URI;
import java.nio.file.Path;
import java.util.Optional;

/** Files as the protocol names them. */
final class Uris {

    private Uris() { }

    /** The file, absolute and normal; empty for a text that is in no file. */
    static Optional<Path> path(String uri) {
        try {
            URI read = URI.create(uri);
            return "file".equalsIgnoreCase(read.getScheme()) ? Optional.of(Path.of(read).toAbsolutePath().normalize()) : Optional.empty();
        } catch (IllegalArgumentException | java.nio.file.FileSystemNotFoundException | SecurityException e) {
            return Optional.empty();
        }
    }

    static String of(Path file) {
        return file.toUri().toString();
    }
}
