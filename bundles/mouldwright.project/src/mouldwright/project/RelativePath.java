package mouldwright.project;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;

import mouldwright.project.ReadResult.Reason;
import mouldwright.project.ReadResult.Refused;

/** Whether a path written in a spec is one that means the same file on every system and stays where it belongs. */
final class RelativePath {

    private static final Pattern DRIVE = Pattern.compile("[A-Za-z]:.*", Pattern.DOTALL);
    private static final Pattern DEVICE = Pattern.compile("(?i)(con|prn|aux|nul|com\\d|lpt\\d)(\\..*)?", Pattern.DOTALL);

    private RelativePath() { }

    /** Why a written path will not do by its looks alone; empty if it will. */
    static Optional<Refused> refusal(String written) {
        if (written.isBlank()) {
            return refused(Reason.BAD_PATH, "a path is expected");
        }
        if (written.startsWith("/") || DRIVE.matcher(written).matches()) {
            return refused(Reason.ABSOLUTE, "\"" + written + "\" is an absolute path; files are named from the project");
        }
        if (written.indexOf('\\') >= 0) {
            return refused(Reason.BAD_PATH, "\"" + written + "\" has a \\ in it; folders are divided by /");
        }
        for (String part : written.split("/")) {
            if (DEVICE.matcher(part).matches()) {
                return refused(Reason.BAD_PATH, "\"" + written + "\" names a device on some systems");
            }
        }
        try {
            Path.of(written);
            return Optional.empty();
        } catch (InvalidPathException e) {
            return refused(Reason.BAD_PATH, "a path cannot have this name: " + e.getReason());
        }
    }

    private static Optional<Refused> refused(Reason reason, String message) {
        return Optional.of(new Refused(reason, message));
    }
}
