package mouldwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import mouldwright.report.TextFinding;
import mouldwright.report.FindingsText;
import mouldwright.report.Ink;
import mouldwright.report.PathNames;
import mouldwright.services.ProcessIo;

/** Findings with their count: as the result, or on standard error where they stand in the way of one. */
final class FindingsOutput {

    private FindingsOutput() { }

    /** Findings as the result, with their count; coloured on a terminal. */
    static void toResult(List<TextFinding> findings, Map<Path, String> texts, ProcessIo io) {
        boolean coloured = io.terminal() && !io.environment().containsKey("NO_COLOR");
        FindingsText text = new FindingsText(new PathNames(io.directory()), texts, coloured ? Ink.TERMINAL : Ink.NONE);
        io.out().print(text.print(findings) + FindingsText.summary(findings) + "\n");
    }

    static void toError(List<TextFinding> findings, Map<Path, String> texts, ProcessIo io) {
        FindingsText text = new FindingsText(new PathNames(io.directory()), texts, Ink.NONE);
        io.err().print(text.print(findings) + FindingsText.summary(findings) + "\n");
    }
}
