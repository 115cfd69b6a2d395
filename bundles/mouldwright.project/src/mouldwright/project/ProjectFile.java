package mouldwright.project;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads the text of a project file: {@code key = value}, one to a line; {@code #} begins a comment at the beginning of a line or
 * after a space.
 *
 * <pre>
 * name = Canopies                  # shown on the papers
 * library = ../shared-stock        # may be given several times; from the folder of this file
 * units = metric                   # or us
 * severity.MW412 = error           # error, warning, info, off
 * </pre>
 *
 * <p>A line that cannot be understood is a fault at its place, and the rest is still read. A single setting given twice is a
 * fault; the first one holds.
 */
public final class ProjectFile {

    /** The file whose folder is the root of a project. */
    public static final String NAME = "mouldwright.project";

    private static final Pattern CODE = Pattern.compile("MW\\d{3}");
    private static final String SEVERITY = "severity.";

    private final Path file;
    private final List<ProjectFault> faults = new ArrayList<>();
    private final List<Library> libraries = new ArrayList<>();
    private final Map<String, SeveritySetting> severities = new HashMap<>();
    private Optional<String> name = Optional.empty();
    private Optional<OutputUnits> units = Optional.empty();

    /**
     * A library folder where it is named.
     *
     * @param folder as written
     * @param file   the project file
     * @param line   counted from 1
     * @param column counted from 1
     */
    public record Library(String folder, Path file, int line, int column) {

        ProjectFault fault(String message) {
            return new ProjectFault(file, line, column, message);
        }
    }

    /**
     * What was read.
     *
     * @param settings  what the file says, as far as it could be understood
     * @param libraries the library folders and where they are named
     * @param faults    what could not be understood, in the order of the lines
     */
    public record Parsed(ProjectSettings settings, List<Library> libraries, List<ProjectFault> faults) { }

    private ProjectFile(Path file) {
        this.file = file;
    }

    /**
     * Reads a project file's text.
     *
     * @param file where the faults are said to be
     * @param text of the file
     */
    public static Parsed parse(Path file, String text) {
        ProjectFile reader = new ProjectFile(file);
        int number = 0;
        for (String line : text.split("\\R", -1)) {
            reader.line(++number, line);
        }
        List<String> folders = reader.libraries.stream().map(Library::folder).toList();
        return new Parsed(new ProjectSettings(reader.name, reader.units, folders, reader.severities),
                List.copyOf(reader.libraries), List.copyOf(reader.faults));
    }

    private void line(int number, String written) {
        String line = withoutComment(written);
        if (line.isBlank()) {
            return;
        }
        int keyAt = indent(line, 0);
        int equals = line.indexOf('=');
        if (equals < 0) {
            fault(number, keyAt, "\"key = value\" expected");
            return;
        }
        String key = line.substring(0, equals).strip();
        int valueAt = indent(line, equals + 1);
        String value = line.substring(equals + 1).strip();
        if (value.isEmpty()) {
            fault(number, equals, "no value for \"" + key + "\"");
        } else if (key.startsWith(SEVERITY)) {
            severity(number, keyAt + SEVERITY.length(), key.substring(SEVERITY.length()), valueAt, value);
        } else {
            setting(number, keyAt, key, valueAt, value);
        }
    }

    private void setting(int number, int keyAt, String key, int valueAt, String value) {
        switch (key) {
            case "library" -> library(number, valueAt, value);
            case "name" -> {
                if (once(name, number, keyAt, key)) {
                    name = Optional.of(value);
                }
            }
            case "units" -> {
                if (once(units, number, keyAt, key)) {
                    units = switch (value) {
                        case "metric" -> Optional.of(OutputUnits.METRIC);
                        case "us" -> Optional.of(OutputUnits.US);
                        default -> Optional.empty();
                    };
                    if (units.isEmpty()) {
                        fault(number, valueAt, "units are metric or us, not \"" + value + "\"");
                    }
                }
            }
            default -> fault(number, keyAt, "no setting \"" + key + "\"; there are library, name, units and severity.MW...");
        }
    }

    private void library(int number, int valueAt, String folder) {
        Optional<ReadResult.Refused> refusal = RelativePath.refusal(folder);
        if (refusal.isPresent()) {
            fault(number, valueAt, refusal.get().message());
        } else if (libraries.stream().anyMatch(library -> library.folder().equals(folder))) {
            fault(number, valueAt, "library folder \"" + folder + "\" given twice");
        } else {
            libraries.add(new Library(folder, file, number, valueAt + 1));
        }
    }

    private void severity(int number, int codeAt, String code, int valueAt, String value) {
        Optional<SeveritySetting> setting = SeveritySetting.of(value);
        if (!CODE.matcher(code).matches()) {
            fault(number, codeAt, "code of a check expected, such as severity.MW412, not \"" + code + "\"");
        } else if (setting.isEmpty()) {
            fault(number, valueAt, "a severity is error, warning, info or off, not \"" + value + "\"");
        } else if (severities.putIfAbsent(code, setting.get()) != null) {
            fault(number, codeAt, "severity of " + code + " given twice");
        }
    }

    private boolean once(Optional<?> before, int number, int keyAt, String key) {
        if (before.isPresent()) {
            fault(number, keyAt, "\"" + key + "\" given twice");
        }
        return before.isEmpty();
    }

    private void fault(int number, int index, String message) {
        faults.add(new ProjectFault(file, number, index + 1, message));
    }

    private static String withoutComment(String line) {
        for (int i = 0; i < line.length(); i++) {
            if (line.charAt(i) == '#' && (i == 0 || Character.isWhitespace(line.charAt(i - 1)))) {
                return line.substring(0, i);
            }
        }
        return line;
    }

    private static int indent(String line, int from) {
        int at = from;
        while (at < line.length() && Character.isWhitespace(line.charAt(at))) {
            at++;
        }
        return at;
    }
}
