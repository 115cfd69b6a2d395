package mouldwright.workbench;

import java.nio.file.Path;
import org.eclipse.core.runtime.Platform;

/** Where the system keeps what programs remember of a user. */
final class DataArea {

    private DataArea() { }

    /** The folder of this program, which need not exist. */
    static Path ofUser() {
        String home = System.getProperty("user.home");
        String stated = System.getenv("XDG_DATA_HOME");
        return switch (Platform.getOS()) {
            case Platform.OS_WIN32 -> Path.of(System.getenv().getOrDefault("LOCALAPPDATA", home), "Mouldwright");
            case Platform.OS_MACOSX -> Path.of(home, "Library", "Application Support", "Mouldwright");
            default -> (stated == null || stated.isBlank() ? Path.of(home, ".local", "share") : Path.of(stated)).resolve("mouldwright");
        };
    }
}
