package mouldwright.services;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import mouldwright.report.TextFinding;

/** What came of making a spec of a table or drawing. */
public sealed interface Imported {

    /** The file could not be read at all.
     *  @param finding why */
    record Unread(TextFinding finding) implements Imported { }

    /** It holds no sections that could be used.
     *  @param findings why
     *  @param texts    the text, by its file */
    record Refused(List<TextFinding> findings, Map<Path, String> texts) implements Imported { }

    /** A spec in the one layout.
     *  @param text     of it
     *  @param findings of a check of it */
    record Spec(String text, List<TextFinding> findings) implements Imported { }
}
