package mouldwright.project;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a project file says. A project without one, or with an empty one, has {@link #NONE}.
 *
 * @param name       of the project, if it states one
 * @param units      its papers are written in, if it states them
 * @param libraries  library folders as written, in order
 * @param severities what it makes of checks, by code, {@code "MW412"}
 */
public record ProjectSettings(Optional<String> name, Optional<OutputUnits> units, List<String> libraries,
        Map<String, SeveritySetting> severities) {

    /** Nothing set. */
    public static final ProjectSettings NONE = new ProjectSettings(Optional.empty(), Optional.empty(), List.of(), Map.of());

    /** Takes copies; the severities come in the order of their codes. */
    public ProjectSettings {
        libraries = List.copyOf(libraries);
        severities = Collections.unmodifiableMap(new TreeMap<>(severities));
    }
}
