package mouldwright.services;

import java.nio.file.Path;
import java.util.List;
import mouldwright.report.TextFinding;

/** Where the declarations of a file are used. */
public sealed interface WhereUsed {

    /**
     * It was looked for.
     *
     * @param declarations of the file, in the order written
     */
    record Found(List<Declared> declarations) implements WhereUsed { }

    /** The file cannot be read. */
    record Unread(TextFinding finding) implements WhereUsed { }

    /**
     * Something with a name.
     *
     * @param kind   in words of the trade, such as {@code resin}
     * @param name   as declared
     * @param line   where, from 1
     * @param places where it is used, by file and place
     */
    record Declared(String kind, String name, int line, List<Place> places) { }

    /**
     * A use.
     *
     * @param file   absolute
     * @param line   from 1
     * @param column from 1
     * @param words  the line, without its indent
     */
    record Place(Path file, int line, int column, String words) { }
}
