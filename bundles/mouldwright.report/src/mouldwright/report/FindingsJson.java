package mouldwright.report;

import java.io.IOException;
import java.util.List;
import mouldwright.check.TextFix;

/** Findings as a JSON array: {@code code, severity, message, file, line, column, length} and, where something mends it, {@code fix} in words and
 *  {@code fixes} as edits of the text. */
public final class FindingsJson {

    private final PathNames names;

    /** @param names how files are named */
    public FindingsJson(PathNames names) {
        this.names = names;
    }

    /** The whole file. */
    public String print(List<TextFinding> findings) {
        return JsonFile.print(json -> json.array(findings, this::write));
    }

    void write(JsonFile json, TextFinding finding) throws IOException {
        json.object(o -> {
            o.member("code", finding.code()).member("severity", Ink.word(finding.severity())).member("message", finding.message())
                    .member("file", names.of(finding.file())).member("line", finding.line()).member("column", finding.column())
                    .member("length", finding.length());
            if (finding.fix().isPresent()) {
                o.member("fix", finding.fix().get());
            }
            if (!finding.fixes().isEmpty()) {
                o.array("fixes", finding.fixes(), FindingsJson::write);
            }
        });
    }

    private static void write(JsonFile json, TextFix fix) throws IOException {
        json.object(o -> o.member("title", fix.title()).member("safe", fix.safe()).array("edits", fix.edits(), (edits, edit) ->
                edits.object(e -> e.member("offset", edit.offset()).member("length", edit.length()).member("text", edit.text()))));
    }
}
