package mouldwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import mouldwright.project.SafeWrite;
import mouldwright.project.WriteResult;
import mouldwright.report.PathNames;
import mouldwright.services.Layout;
import mouldwright.services.ProcessIo;
import mouldwright.services.SpecSession;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Lays specs out in the one layout. A file that cannot be read as a spec is left as it is. */
final class FormatCommand implements Subcommand {

    @Override
    public String name() {
        return "format";
    }

    @Override
    public String summary() {
        return "lay specs out in the one layout, without touching a word of them";
    }

    @Override
    public void describe(CommandSpec spec) {
        spec.addOption(Options.flag("--check", "write nothing; name the files that are not laid out, and fail if there are any"));
        spec.addOption(Options.flag("--print", "write nothing; print the one layout, for programs that compare texts"));
        spec.addPositional(Options.files("specs and libraries"));
    }

    @Override
    public int run(ParseResult parsed, ProcessIo io) {
        List<String> files = parsed.matchedPositionalValue(0, List.of());
        List<Path> paths = files.stream().map(file -> Paths.of(file, io)).toList();
        if (Options.given(parsed, "--print") && (Options.given(parsed, "--check") || paths.size() > 1)) {
            throw new WrongUsage("--print takes one file and no --check");
        }
        SpecSession session = SpecSession.start();
        int worst = ExitCode.FINE;
        for (Path path : paths) {
            worst = Math.max(worst, Options.given(parsed, "--print") ? print(session.layOut(path), path, io)
                    : layOut(session.layOut(path), path, Options.given(parsed, "--check"), io));
        }
        return worst;
    }

    /** A text with errors is printed as it is: whoever compares texts wants to see it all the same. */
    private static int print(Layout layout, Path path, ProcessIo io) {
        return switch (layout) {
            case Layout.Laid(String text, boolean changed) -> {
                io.out().print(text);
                yield ExitCode.FINE;
            }
            case Layout.Refused(var findings, var texts) when texts.containsKey(path) -> {
                io.out().print(texts.get(path));
                yield ExitCode.FINE;
            }
            default -> layOut(layout, path, true, io);
        };
    }

    private static int layOut(Layout layout, Path path, boolean checkOnly, ProcessIo io) {
        String name = new PathNames(io.directory()).of(path);
        return switch (layout) {
            case Layout.Unread(var finding) -> {
                FindingsOutput.toError(List.of(finding), Map.of(), io);
                yield ExitCode.FILE;
            }
            case Layout.Refused(var findings, var texts) -> {
                FindingsOutput.toError(findings, texts, io);
                yield ExitCode.ERRORS;
            }
            case Layout.MeaningLost(String word) ->
                    throw new IllegalStateException("laying out " + name + " would change it at `" + word + "`; it is left as it is");
            case Layout.Laid(String text, boolean changed) when !changed -> ExitCode.FINE;
            case Layout.Laid(String text, boolean changed) when checkOnly -> {
                io.out().print(name + "\n");
                yield ExitCode.ERRORS;
            }
            case Layout.Laid(String text, boolean changed) -> write(path, name, text, io);
        };
    }

    private static int write(Path path, String name, String text, ProcessIo io) {
        return switch (SafeWrite.text(path, text)) {
            case WriteResult.Written written -> ExitCode.FINE;
            case WriteResult.NotWritten(Path file, String message) -> {
                io.err().print("mouldwright: " + name + " is not written: " + message + "\n");
                yield ExitCode.FILE;
            }
        };
    }
}
