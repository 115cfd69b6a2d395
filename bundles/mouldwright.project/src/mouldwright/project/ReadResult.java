package mouldwright.project;

import java.nio.file.Path;

/** What came of reading a file: its text, or why not. */
public sealed interface ReadResult {

    /**
     * The file was read.
     *
     * @param text its text, without a byte order mark
     * @param file where it lies, absolute; of a file in a tree of version control, where it would lie
     */
    record Text(String text, Path file) implements ReadResult { }

    /**
     * The file was not read.
     *
     * @param reason  of what kind the obstacle is
     * @param message what is wrong, for a finding at the place where the file is named
     */
    record Refused(Reason reason, String message) implements ReadResult { }

    /** Why a file was not read. */
    enum Reason {
        /** Not a path at all, or one that would mean something else on another system. */
        BAD_PATH,
        /** An absolute path. */
        ABSOLUTE,
        /** Leads out of the project, by {@code ..} or over a link. */
        OUTSIDE,
        /** No such file. */
        MISSING,
        /** A folder. */
        FOLDER,
        /** A device, a pipe, or another thing that is no plain file. */
        NOT_A_FILE,
        /** Over the limit. */
        TOO_LARGE,
        /** There, but may not be read, or reading it failed. */
        UNREADABLE,
        /** Not UTF-8. */
        NOT_UTF8,
        /** Not text. */
        BINARY
    }
}
