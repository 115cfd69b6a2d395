package mouldwright.services;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import mouldwright.report.TextFinding;

/** What came of laying a spec out anew. */
public sealed interface Layout {

    /** The file could not be read.
     *  @param finding why */
    record Unread(TextFinding finding) implements Layout { }

    /** The text cannot be read as a spec, so it is left as it is.
     *  @param findings its errors
     *  @param texts    the text, by its file */
    record Refused(List<TextFinding> findings, Map<Path, String> texts) implements Layout { }

    /** The new layout would mean something else, which is a fault of the layout; nothing is to be written.
     *  @param word the first word that would differ */
    record MeaningLost(String word) implements Layout { }

    /** The text in its layout.
     *  @param text    to write
     *  @param changed whether it differs from the file */
    record Laid(String text, boolean changed) implements Layout { }
}
