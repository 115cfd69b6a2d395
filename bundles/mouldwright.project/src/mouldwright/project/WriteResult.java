package mouldwright.project;

import java.nio.file.Path;

/** What came of writing a file. */
public sealed interface WriteResult {

    /**
     * The file is there, whole.
     *
     * @param file as asked for
     */
    record Written(Path file) implements WriteResult { }

    /**
     * The file was not written; what was there before is untouched.
     *
     * @param file    as asked for
     * @param message why, in words
     */
    record NotWritten(Path file, String message) implements WriteResult { }
}
