package mouldwright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Spec texts of our own. */
final class Specs {

    static final String BOX = """
            plug Box "A box" {
                units mm
                half sections
                station A at 0 {
                    0 0
                    100 0 knuckle
                    100 50 knuckle
                    0 50
                }
                station B at 400 like A
            }
            """;

    private Specs() { }

    static Path write(Path folder, String name, String text) {
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            return Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
