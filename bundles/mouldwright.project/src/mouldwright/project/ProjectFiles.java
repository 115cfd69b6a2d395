package mouldwright.project;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

import mouldwright.project.ContentSource.Found;
import mouldwright.project.ContentSource.NotFound;
import mouldwright.project.ReadResult.Reason;
import mouldwright.project.ReadResult.Refused;

/**
 * The one way the files of a project are read. Nothing outside the root and the named library folders is ever opened,
 * whatever a spec writes and wherever a link leads; no file over the limit is taken into memory; what is not UTF-8 text is
 * refused. Every obstacle is a value with a message fit for a finding.
 *
 * <p>Stateless but for its source, and so safe to share between threads as far as the source is.
 */
public final class ProjectFiles {

    /** Bytes a file may have where nothing else is asked for. */
    public static final long DEFAULT_LIMIT = 20_000_000;

    /** What a library's file is called after its name. */
    public static final String SUFFIX = ".plug";

    private static final long MOST = 1_000_000_000;
    private static final Pattern LIBRARY_NAME = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_]*(\\.[\\p{L}_][\\p{L}\\p{N}_]*)*");

    private final Project project;
    private final ContentSource source;
    private final long limit;

    /** The files of a project on the disk. */
    public ProjectFiles(Project project) {
        this(project, new DiskSource(), DEFAULT_LIMIT);
    }

    /**
     * The files of a project.
     *
     * @param project whose root and libraries they lie in
     * @param source  where their bytes come from
     * @param limit   bytes a file may have, from 0 to 1 GB
     */
    public ProjectFiles(Project project, ContentSource source, long limit) {
        if (limit < 0 || limit > MOST) {
            throw new IllegalArgumentException("no limit for a file: " + limit);
        }
        this.project = project;
        this.source = source;
        this.limit = limit;
    }

    /** The project. */
    public Project project() {
        return project;
    }

    /** Reads a file named from the root of the project. */
    public ReadResult resolve(String relative) {
        return from(project.root(), project.root(), relative);
    }

    /**
     * Reads a file named from the folder of another, as a spec names its tables and drawings. It stays confined to the folder
     * tree the other file lies in: the root, or its library folder.
     *
     * @param file     the file that names it, absolute
     * @param relative as written there
     */
    public ReadResult beside(Path file, String relative) {
        Path naming = file.toAbsolutePath().normalize();
        Optional<Path> within = folders().stream().filter(naming::startsWith).findFirst();
        if (within.isEmpty() || naming.getParent() == null) {
            return new Refused(Reason.OUTSIDE, "\"" + relative + "\" is named by a file outside the project");
        }
        return from(naming.getParent(), within.get(), relative);
    }

    /**
     * Reads a library by its name: {@code stock.polyester} is {@code stock/polyester.plug} under the root, or else under the
     * first library folder that has it. Upper and lower case count.
     */
    public ReadResult library(String name) {
        if (!LIBRARY_NAME.matcher(name).matches()) {
            return new Refused(Reason.BAD_PATH, "\"" + name + "\" is no name of a library");
        }
        String relative = name.replace('.', '/') + SUFFIX;
        for (Path folder : folders()) {
            ReadResult result = from(folder, folder, relative);
            if (!(result instanceof Refused(var reason, var message)) || reason != Reason.MISSING) {
                return result;
            }
        }
        return new Refused(Reason.MISSING, "no library " + name + ": no " + relative + " in the project or its library folders");
    }

    /** Where a library could lie, in the order they are looked in: {@code <root>/stock/polyester.plug}, and so on. */
    public List<Path> libraryPlaces(String name) {
        String relative = name.replace('.', '/') + SUFFIX;
        return LIBRARY_NAME.matcher(name).matches() ? folders().stream().map(f -> f.resolve(relative)).toList() : List.of();
    }

    /** Names under which libraries could be read, sorted, as far as the source lists files; a file found may be no library. */
    public List<String> libraryNames() {
        return folders().stream().flatMap(folder -> source.list(folder, SUFFIX).stream().map(file -> name(folder.relativize(file))))
                .filter(name -> LIBRARY_NAME.matcher(name).matches()).distinct().sorted().toList();
    }

    private static String name(Path file) {
        String path = file.toString().replace(file.getFileSystem().getSeparator(), ".");
        return path.substring(0, path.length() - SUFFIX.length());
    }

    private List<Path> folders() {
        List<Path> folders = new ArrayList<>();
        folders.add(project.root());
        folders.addAll(project.libraries());
        return folders;
    }

    private ReadResult from(Path folder, Path within, String relative) {
        Optional<Refused> refusal = RelativePath.refusal(relative);
        if (refusal.isPresent()) {
            return refusal.get();
        }
        Path file = folder.resolve(relative).normalize();
        if (!file.startsWith(within)) {
            return new Refused(Reason.OUTSIDE, "\"" + relative + "\" leads out of the project");
        }
        return switch (source.fetch(file, within, limit)) {
            case Found found -> TextDecoder.decode(found, relative);
            case NotFound(var reason, var message) -> new Refused(reason, "\"" + relative + "\" is not read: " + message);
        };
    }
}
