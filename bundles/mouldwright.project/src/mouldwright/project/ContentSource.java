package mouldwright.project;

import java.nio.file.Path;
import java.util.List;

/**
 * Where the bytes of files come from: the disk, the editors that have them open, or a tree in version control. Only
 * {@link ProjectFiles} asks it, after a path has been found to stay inside; a source that can be led elsewhere by a link
 * must refuse that itself.
 */
public interface ContentSource {

    /** What a source found. */
    sealed interface Content { }

    /**
     * A plain file's bytes.
     *
     * @param bytes of the file; the receiver may keep them
     * @param file  where it lies
     */
    record Found(byte[] bytes, Path file) implements Content { }

    /**
     * No file that may be read.
     *
     * @param reason  why
     * @param message in words, without the name of the file
     */
    record NotFound(ReadResult.Reason reason, String message) implements Content { }

    /**
     * Fetches a file.
     *
     * @param file   absolute and normal, inside {@code within}
     * @param within the folder nothing may lead out of, absolute and normal
     * @param limit  bytes at most
     */
    Content fetch(Path file, Path within, long limit);

    /**
     * Names the files of a folder and its folders, for suggestions: a source may know fewer than it would fetch.
     *
     * @param folder absolute and normal
     * @param suffix of their names
     * @return sorted, as far as the source looks
     */
    default List<Path> list(Path folder, String suffix) {
        return List.of();
    }
}
