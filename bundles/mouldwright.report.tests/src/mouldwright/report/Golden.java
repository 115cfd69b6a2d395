package mouldwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Files that hold what a report looked like when somebody last looked at it. With {@code -Dmouldwright.golden.renew=true} they are written
 * anew instead of compared; look at what changed before it is kept.
 */
final class Golden {

    private static final Path FOLDER = Path.of("resources", "golden");

    private Golden() { }

    static void compare(String name, String actual) {
        Path file = FOLDER.resolve(name);
        try {
            if (Boolean.getBoolean("mouldwright.golden.renew")) {
                Files.createDirectories(FOLDER);
                Files.writeString(file, actual);
            }
            assertThat(actual).as("as in %s; renew with -Dmouldwright.golden.renew=true", file).isEqualTo(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
