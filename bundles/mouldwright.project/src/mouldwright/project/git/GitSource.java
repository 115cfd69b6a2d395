package mouldwright.project.git;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import mouldwright.project.ContentSource;
import mouldwright.project.DiskSource;
import mouldwright.project.ReadResult.Reason;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectLoader;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevTree;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;
import org.eclipse.jgit.treewalk.TreeWalk;

/**
 * Files as a revision of a git repository has them: specs, their libraries and their tables. What lies outside the repository, such as a
 * library folder shared by several, is read from the disk, since no revision keeps it. Nothing is checked out or written.
 */
public final class GitSource implements ContentSource, AutoCloseable {

    private final Repository repository;
    private final Path root;
    private final RevTree tree;
    private final ContentSource outside = new DiskSource();

    private GitSource(Repository repository, Path root, RevTree tree) {
        this.repository = repository;
        this.root = root;
        this.tree = tree;
    }

    /** What came of opening a revision. */
    public sealed interface Opened {
        /** It is there. */
        record Source(GitSource source) implements Opened { }

        /** It is not. @param message why, in words */
        record Refused(String message) implements Opened { }
    }

    /**
     * Opens a revision.
     *
     * @param place    a file or folder in the work tree, absolute
     * @param revision as git names it: a branch, a tag, a commit, {@code HEAD~2}
     */
    public static Opened open(Path place, String revision) {
        QuietSystem.install();
        FileRepositoryBuilder builder = new FileRepositoryBuilder().findGitDir((Files.isDirectory(place) ? place : place.getParent()).toFile());
        if (builder.getGitDir() == null)
            return new Opened.Refused("there is no git repository round " + place.getFileName());
        try {
            Repository repository = builder.setMustExist(true).build();
            if (repository.isBare())
                return refuse(repository, "the git repository has no work tree");
            ObjectId commit = repository.resolve(revision + "^{commit}");
            if (commit == null)
                return refuse(repository, "there is no revision " + revision);
            try (RevWalk walk = new RevWalk(repository)) {
                return new Opened.Source(new GitSource(repository, repository.getWorkTree().toPath().toRealPath(), walk.parseCommit(commit).getTree()));
            }
        } catch (IOException | RuntimeException e) {
            return new Opened.Refused("the revision " + revision + " cannot be read: " + e.getMessage());
        }
    }

    private static Opened refuse(Repository repository, String message) {
        repository.close();
        return new Opened.Refused(message);
    }

    /** The top of the work tree. */
    public Path root() {
        return root;
    }

    @Override
    public Content fetch(Path file, Path within, long limit) {
        Optional<String> path = inTree(file);
        if (path.isEmpty())
            return outside.fetch(file, within, limit);
        try (TreeWalk walk = TreeWalk.forPath(repository, path.get(), tree)) {
            if (walk == null)
                return new NotFound(Reason.MISSING, "there is no such file in that revision");
            FileMode mode = walk.getFileMode(0);
            if (mode.equals(FileMode.TREE))
                return new NotFound(Reason.FOLDER, "it is a folder");
            if (!mode.equals(FileMode.REGULAR_FILE) && !mode.equals(FileMode.EXECUTABLE_FILE))
                return new NotFound(Reason.NOT_A_FILE, "it is a link or a repository of its own in that revision, not a plain file");
            ObjectLoader blob = repository.open(walk.getObjectId(0));
            if (blob.getSize() > limit)
                return new NotFound(Reason.TOO_LARGE, "it is larger than " + limit / 1_000_000.0 + " MB");
            return new Found(blob.getBytes(), file);
        } catch (IOException e) {
            return new NotFound(Reason.UNREADABLE, "it cannot be read from that revision");
        }
    }

    /** The path in the tree, with slashes; empty for a file outside the work tree. */
    private Optional<String> inTree(Path file) {
        Path real = resolved(file);
        if (!real.startsWith(root) || real.equals(root))
            return Optional.empty();
        return Optional.of(root.relativize(real).toString().replace(real.getFileSystem().getSeparator(), "/"));
    }

    /** A file need not exist any more: the nearest folder that does is followed through links, as the root was. */
    private static Path resolved(Path file) {
        for (Path folder = file.getParent(); folder != null; folder = folder.getParent())
            try {
                return folder.toRealPath().resolve(folder.relativize(file));
            } catch (IOException e) {
                // Not there today: try the one above.
            }
        return file;
    }

    @Override
    public void close() {
        repository.close();
    }
}
