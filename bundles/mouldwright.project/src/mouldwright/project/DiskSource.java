package mouldwright.project;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import mouldwright.project.ReadResult.Reason;

import mouldwright.project.ReadResult.Reason;

/** Files as they lie on the disk. A link is followed as long as it stays inside the folder. */
public final class DiskSource implements ContentSource {

    /** Folders within folders that are looked into for a list. */
    private static final int DEEPEST = 4;
    /** Files looked at for a list. */
    private static final int MOST_VISITED = 2000;

    @Override
    public Content fetch(Path file, Path within, long limit) {
        try {
            return fetchReal(file, within, limit);
        } catch (NoSuchFileException e) {
            return new NotFound(Reason.MISSING, "there is no such file");
        } catch (AccessDeniedException e) {
            return new NotFound(Reason.UNREADABLE, "it may not be read");
        } catch (FileSystemException e) {
            if (file.getParent() != null && Files.exists(file.getParent()) && !Files.isDirectory(file.getParent())) {
                return new NotFound(Reason.MISSING, "there is no such file");
            }
            return new NotFound(Reason.UNREADABLE,
                    e.getReason() == null ? "it cannot be read" : "it cannot be read: " + e.getReason());
        } catch (IOException | SecurityException e) {
            return new NotFound(Reason.UNREADABLE, "it cannot be read");
        }
    }

    private static Content fetchReal(Path file, Path within, long limit) throws IOException {
        Path real = file.toRealPath();
        if (!real.startsWith(within.toRealPath())) {
            return new NotFound(Reason.OUTSIDE, "its link leads out of the folder");
        }
        if (!hasExactName(file, within)) {
            return new NotFound(Reason.MISSING, "there is no such file; upper and lower case count");
        }
        BasicFileAttributes attributes = Files.readAttributes(real, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        if (attributes.isDirectory()) {
            return new NotFound(Reason.FOLDER, "it is a folder");
        }
        if (!attributes.isRegularFile()) {
            return new NotFound(Reason.NOT_A_FILE, "it is a device or a pipe, not a plain file");
        }
        if (attributes.size() > limit) {
            return tooLarge(limit);
        }
        // Opened without following links, since the check above was of the real path; read with the limit again, since a
        // file may grow meanwhile.
        try (InputStream in = Files.newInputStream(real, LinkOption.NOFOLLOW_LINKS)) {
            byte[] bytes = in.readNBytes((int) Math.min(limit + 1, Integer.MAX_VALUE - 8));
            return bytes.length > limit ? tooLarge(limit) : new Found(bytes, file);
        }
    }

    /** Some file systems find {@code Stock.plug} under {@code stock.plug}; a project that relies on it breaks on the next machine. */
    private static boolean hasExactName(Path file, Path within) throws IOException {
        Path asked = within.relativize(file);
        Path named = within.toRealPath();
        if (file.equals(within)) {
            return true;
        }
        for (Path part : asked) {
            Path entry = named.resolve(part);
            Path kept = entry.toRealPath(LinkOption.NOFOLLOW_LINKS).getFileName();
            if (kept == null || !composed(kept).equals(composed(part))) {
                return false;
            }
            named = entry.toRealPath();
        }
        return true;
    }

    /** An accented letter as one code point: some file systems keep it as two. */
    private static String composed(Path name) {
        return Normalizer.normalize(name.toString(), Normalizer.Form.NFC);
    }

    private static NotFound tooLarge(long limit) {
        return new NotFound(Reason.TOO_LARGE, "it is larger than " + limit / 1_000_000.0 + " MB");
    }

    /** Not into folders deeper than a few, nor hidden ones, nor without end: whoever starts in a large folder is not kept waiting. */
    @Override
    public List<Path> list(Path folder, String suffix) {
        List<Path> files = new ArrayList<>();
        int[] visited = {0};
        try {
            Files.walkFileTree(folder, Set.of(), DEEPEST, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult preVisitDirectory(Path directory, BasicFileAttributes attributes) {
                    boolean hidden = !directory.equals(folder) && directory.getFileName().toString().startsWith(".");
                    return hidden ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    if (attributes.isRegularFile() && file.toString().endsWith(suffix)) {
                        files.add(file);
                    }
                    return ++visited[0] > MOST_VISITED ? FileVisitResult.TERMINATE : FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFileFailed(Path file, IOException e) {
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException | SecurityException e) {
            return List.of();
        }
        return files.stream().sorted().toList();
    }
}
