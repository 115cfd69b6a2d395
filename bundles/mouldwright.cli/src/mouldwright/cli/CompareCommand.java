package mouldwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.BuildPlan;
import mouldwright.project.OutputUnits;
import mouldwright.project.SafeWrite;
import mouldwright.project.WriteResult;
import mouldwright.project.git.GitSource;
import mouldwright.report.Comparison;
import mouldwright.report.ComparisonJson;
import mouldwright.report.ComparisonPage;
import mouldwright.report.ComparisonText;
import mouldwright.report.Estimate;
import mouldwright.report.PathNames;
import mouldwright.services.Checked;
import mouldwright.services.ProcessIo;
import mouldwright.services.SpecSession;
import mouldwright.units.UnitSystem;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Tells what changed between two specs, or two revisions of one: geometry, quantities, cost, days and findings. */
final class CompareCommand implements Subcommand {

    @Override
    public String name() {
        return "compare";
    }

    @Override
    public String summary() {
        return "tell what changed between two specs or revisions of one";
    }

    @Override
    public void describe(CommandSpec spec) {
        spec.addOption(Options.choice("--format", "text|json|html", "how: text, a JSON object, or a page", List.of("text", "json", "html")));
        spec.addOption(Options.text("--out", "FILE", "write to a file instead; a crash leaves the old one whole"));
        spec.addOption(Options.choice("--units", "metric|us", "units of text and page; else as the project says, else metric", List.of("metric", "us")));
        spec.addOption(Options.text("--plug", "NAME", "which plug, where the files have several"));
        spec.addPositional(Options.parameter(0, "OLD", "a spec, or REV:path of one in a git revision"));
        spec.addPositional(Options.parameter(1, "NEW", "likewise"));
    }

    @Override
    public int run(ParseResult parsed, ProcessIo io) {
        Optional<Path> target = Options.value(parsed, "--out").map(written -> Paths.of(written, io));
        if (target.isPresent() && target.get().toString().endsWith(".plug")) {
            throw new WrongUsage("--out would write over a spec: " + target.get().getFileName());
        }
        Optional<String> plug = Options.value(parsed, "--plug");
        return switch (read(parsed.matchedPositionalValue(0, ""), plug, io)) {
            case Side.None(int code) -> code;
            case Side.Read(var old, var oldChecked) -> switch (read(parsed.matchedPositionalValue(1, ""), plug, io)) {
                case Side.None(int code) -> code;
                case Side.Read(var now, var checked) -> deliver(print(Comparison.of(old, now), parsed, checked, io), target, io);
            };
        };
    }

    /** One of the two. */
    private sealed interface Side {
        /** It has a plan. */
        record Read(Estimate estimate, Checked checked) implements Side { }

        /** It has none; the reason is printed already. */
        record None(int exitCode) implements Side { }
    }

    private static Side read(String written, Optional<String> plug, ProcessIo io) {
        int colon = written.indexOf(':');
        if (colon < 1 || Files.exists(Paths.of(written, io))) {
            return side(SpecSession.start().check(Paths.of(written, io), () -> false), plug, io);
        }
        String revision = written.substring(0, colon);
        return switch (GitSource.open(io.path(""), revision)) {
            case GitSource.Opened.Refused(String message) -> {
                io.err().print("mouldwright: " + written + ": " + message + "\n");
                yield new Side.None(ExitCode.FILE);
            }
            case GitSource.Opened.Source(GitSource source) -> {
                try (source) {
                    yield side(SpecSession.over(source).check(place(source, written.substring(colon + 1), io), () -> false), plug, io);
                }
            }
        };
    }

    /** As git has it: from the top of the work tree, or with {@code ./} from where one stands. */
    private static Path place(GitSource source, String path, ProcessIo io) {
        return path.startsWith("./") || path.startsWith("../") ? Paths.of(path, io).toAbsolutePath().normalize() : source.root().resolve(path).normalize();
    }

    private static Side side(Checked checked, Optional<String> plug, ProcessIo io) {
        return switch (PlugChoice.of(checked, plug, io)) {
            case PlugChoice.None(int code) -> new Side.None(code);
            case PlugChoice.Chosen(BuildPlan plan) -> new Side.Read(Estimate.of(plan, checked.revision(), checked.findings()), checked);
        };
    }

    private static String print(Comparison comparison, ParseResult parsed, Checked checked, ProcessIo io) {
        return switch (Options.value(parsed, "--format").orElse("text")) {
            case "json" -> new ComparisonJson(new PathNames(io.directory())).print(comparison);
            case "html" -> new ComparisonPage(units(parsed, checked)).print(comparison);
            default -> new ComparisonText(units(parsed, checked)).print(comparison);
        };
    }

    private static UnitSystem units(ParseResult parsed, Checked checked) {
        boolean us = Options.value(parsed, "--units").map("us"::equals)
                .orElseGet(() -> checked.project().settings().units().filter(units -> units == OutputUnits.US).isPresent());
        return us ? UnitSystem.US : UnitSystem.METRIC;
    }

    private static int deliver(String text, Optional<Path> target, ProcessIo io) {
        if (target.isEmpty()) {
            io.out().print(text);
            return ExitCode.FINE;
        }
        return switch (SafeWrite.text(target.get(), text)) {
            case WriteResult.Written written -> ExitCode.FINE;
            case WriteResult.NotWritten(Path path, String message) -> {
                io.err().print("mouldwright: " + new PathNames(io.directory()).of(path) + " is not written: " + message + "\n");
                yield ExitCode.FILE;
            }
        };
    }
}
