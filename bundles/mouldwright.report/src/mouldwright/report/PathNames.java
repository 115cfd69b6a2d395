package mouldwright.report;

import java.nio.file.Path;

/** How files are named on paper: from a folder where they lie in it, with forward slashes on every system. */
public final class PathNames {

    private final Path folder;

    /** Names seen from a folder.
     *  @param folder absolute */
    public PathNames(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
    }

    /** A file's name seen from the folder; a file outside it keeps its whole name. */
    public String of(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        Path name = whole.startsWith(folder) && !whole.equals(folder) ? folder.relativize(whole) : whole;
        return name.toString().replace('\\', '/');
    }
}
