package mouldwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import mouldwright.report.TextFinding;
import mouldwright.report.FindingsText;
import mouldwright.report.Ink;
import mouldwright.report.PathNames;
import mouldwright.services.ProcessIo;

/** Findings where they stand in the way of a result: on standard error, with their count. */
final class FindingsOutput {

    private FindingsOutput() { }

    static void toError(List<TextFinding> findings, Map<Path, String> texts, ProcessIo io) {
        FindingsText text = new FindingsText(new PathNames(io.directory()), texts, Ink.NONE);
        io.err().print(text.print(findings) + FindingsText.summary(findings) + "\n");
    }
}
