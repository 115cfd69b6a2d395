package mouldwright.project;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A project: its root, its library folders and its settings.
 *
 * @param root      absolute and normal
 * @param libraries library folders in order, absolute and normal; one may lie outside the root, since the project file
 *                  names it
 * @param settings  what the project file says
 * @param faults    what is wrong with the project file
 */
public record Project(Path root, List<Path> libraries, ProjectSettings settings, List<ProjectFault> faults) {

    private static final long PROJECT_FILE_LIMIT = 1_000_000;

    /** Takes copies. */
    public Project {
        libraries = List.copyOf(libraries);
        faults = List.copyOf(faults);
    }

    /** The project of a file on the disk. */
    public static Project of(Path file) {
        return of(file, new DiskSource());
    }

    /**
     * The project of a file: the nearest folder upward with a project file in it, else the file's own folder.
     *
     * @param file   a spec or library; need not exist
     * @param source where the project file is looked for and read
     */
    public static Project of(Path file, ContentSource source) {
        Path own = file.toAbsolutePath().normalize().getParent();
        if (own == null) {
            own = file.toAbsolutePath().getRoot();
        }
        for (Path folder = own; folder != null; folder = folder.getParent()) {
            Path candidate = folder.resolve(ProjectFile.NAME);
            ContentSource.Content content = source.fetch(candidate, folder, PROJECT_FILE_LIMIT);
            if (content instanceof ContentSource.Found found) {
                return read(folder, candidate, found, source);
            }
            if (content instanceof ContentSource.NotFound(var reason, var message) && isThere(reason)) {
                return new Project(folder, List.of(), ProjectSettings.NONE,
                        List.of(new ProjectFault(candidate, 1, 1, "the project file is not read: " + message)));
            }
        }
        return new Project(own, List.of(), ProjectSettings.NONE, List.of());
    }

    /** A project file that cannot be read still marks the root, or a wider root would be taken; a folder of that name does not. */
    private static boolean isThere(ReadResult.Reason reason) {
        return switch (reason) {
            case OUTSIDE, UNREADABLE, TOO_LARGE, NOT_UTF8, BINARY -> true;
            case BAD_PATH, ABSOLUTE, MISSING, FOLDER, NOT_A_FILE -> false;
        };
    }

    private static Project read(Path root, Path file, ContentSource.Found found, ContentSource source) {
        return switch (TextDecoder.decode(found, ProjectFile.NAME)) {
            case ReadResult.Refused(var reason, var message) ->
                    new Project(root, List.of(), ProjectSettings.NONE, List.of(new ProjectFault(file, 1, 1, message)));
            case ReadResult.Text(var text, var path) -> {
                ProjectFile.Parsed parsed = ProjectFile.parse(file, text);
                List<ProjectFault> faults = new ArrayList<>(parsed.faults());
                List<Path> libraries = libraries(root, parsed.libraries(), source, faults);
                yield new Project(root, libraries, parsed.settings(), faults);
            }
        };
    }

    private static List<Path> libraries(Path root, List<ProjectFile.Library> named, ContentSource source,
            List<ProjectFault> faults) {
        Set<Path> folders = new LinkedHashSet<>();
        for (ProjectFile.Library library : named) {
            Path folder = root.resolve(library.folder()).normalize();
            boolean isFolder = source.fetch(folder, folder, 0) instanceof ContentSource.NotFound(var reason, var message)
                    && reason == ReadResult.Reason.FOLDER;
            if (isFolder) {
                folders.add(folder);
            } else {
                faults.add(library.fault("there is no library folder \"" + library.folder() + "\""));
            }
        }
        return List.copyOf(folders);
    }
}
