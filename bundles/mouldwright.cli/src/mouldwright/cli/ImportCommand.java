package mouldwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import mouldwright.check.Severity;
import mouldwright.exchange.drawing.DrawnSection;
import mouldwright.project.SafeWrite;
import mouldwright.project.WriteResult;
import mouldwright.report.PathNames;
import mouldwright.report.TextFinding;
import mouldwright.services.ImportOrder;
import mouldwright.services.Imported;
import mouldwright.services.ProcessIo;
import mouldwright.services.SpecSession;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Makes a spec of offsets in a table or a drawing. */
final class ImportCommand implements Subcommand {

    @Override
    public String name() {
        return "import";
    }

    @Override
    public String summary() {
        return "make a spec of a table of offsets or a drawing";
    }

    @Override
    public void describe(CommandSpec spec) {
        spec.addOption(Options.text("--name", "NAME", "name of the plug; else the file's"));
        spec.addOption(Options.text("--units", "UNIT", "unit of lengths where the file names none: mm, cm, m, in, ft"));
        spec.addOption(Options.text("--every", "LENGTH", "how far apart stations stand, where the file does not say where they do"));
        spec.addOption(Options.choice("--sections", "half|full", "what a drawing shows of each section; else half", List.of("half", "full")));
        spec.addOption(Options.text("--tolerance", "LENGTH", "how near ends of drawn lines are joined, and how closely sections follow them; else 0.1mm"));
        spec.addOption(Options.text("--out", "FILE", "write to a file that is not there yet, instead of printing"));
        spec.addOption(Options.flag("--force", "write over the file if it is there"));
        spec.addPositional(Options.parameter(0, "TABLE", "a table as CSV, or a drawing as DXF"));
    }

    @Override
    public int run(ParseResult parsed, ProcessIo io) {
        Path file = Paths.of(parsed.matchedPositionalValue(0, ""), io);
        if (file.getFileName() == null)
            throw new WrongUsage("no file: " + file);
        Optional<Path> target = Options.value(parsed, "--out").map(written -> Paths.of(written, io));
        if (target.isPresent() && !target.get().toString().endsWith(".plug"))
            throw new WrongUsage("--out names a spec, which ends in .plug");
        if (target.isPresent() && Files.exists(target.get()) && !Options.given(parsed, "--force"))
            throw new WrongUsage(new PathNames(io.directory()).of(target.get()) + " is there already; --force writes over it");
        return switch (SpecSession.start().importOffsets(file, target, order(parsed, file))) {
            case Imported.Unread(TextFinding finding) -> {
                FindingsOutput.toError(List.of(finding), Map.of(), io);
                yield ExitCode.FILE;
            }
            case Imported.Refused(var findings, var texts) -> {
                FindingsOutput.toError(findings, texts, io);
                yield ExitCode.ERRORS;
            }
            case Imported.Spec(String text, var findings) -> deliver(text, findings, target, io);
        };
    }

    private static ImportOrder order(ParseResult parsed, Path file) {
        String stem = file.getFileName().toString().replaceFirst("\\.[^.]*$", "");
        String named = stem.isEmpty() ? "Plug" : Character.toUpperCase(stem.charAt(0)) + stem.substring(1);
        return new ImportOrder(Options.value(parsed, "--name").orElse(named), Options.value(parsed, "--units").map(written -> Lengths.unit("--units", written)),
                Options.value(parsed, "--tolerance").map(written -> Lengths.of("--tolerance", written)).orElse(DrawnSection.TOLERANCE),
                Options.value(parsed, "--every").map(written -> OptionalDouble.of(Lengths.of("--every", written))).orElse(OptionalDouble.empty()),
                Options.value(parsed, "--sections").filter("full"::equals).isPresent());
    }

    /** What a check of the new spec finds goes with it; the spec is delivered all the same, since that is where it is mended. */
    private static int deliver(String text, List<TextFinding> findings, Optional<Path> target, ProcessIo io) {
        if (target.isEmpty()) {
            io.out().print(text);
        } else if (SafeWrite.text(target.get(), text) instanceof WriteResult.NotWritten(Path path, String message)) {
            io.err().print("mouldwright: " + new PathNames(io.directory()).of(path) + " is not written: " + message + "\n");
            return ExitCode.FILE;
        }
        if (!findings.isEmpty())
            FindingsOutput.toError(findings, Map.of(findings.getFirst().file(), text), io);
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR) ? ExitCode.ERRORS : ExitCode.FINE;
    }
}
