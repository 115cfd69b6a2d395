package mouldwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import mouldwright.report.TextFinding;
import mouldwright.report.FindingsJson;
import mouldwright.report.FindingsSarif;
import mouldwright.report.PathNames;
import mouldwright.check.Severity;
import mouldwright.services.Checked;
import mouldwright.services.DiskChanges;
import mouldwright.services.FileChanges;
import mouldwright.services.ProcessIo;
import mouldwright.services.SpecSession;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Prints what is found in specs. The findings are the result, so they go to standard output. */
final class CheckCommand implements Subcommand {

    private final Supplier<FileChanges> changes;

    CheckCommand() {
        this(DiskChanges::new);
    }

    /** With changes of a test's own. */
    CheckCommand(Supplier<FileChanges> changes) {
        this.changes = changes;
    }

    @Override
    public String name() {
        return "check";
    }

    @Override
    public String summary() {
        return "print what is found in specs and libraries";
    }

    @Override
    public void describe(CommandSpec spec) {
        spec.addOption(Options.choice("--format", "text|json|sarif", "how: text, a JSON array, or a SARIF 2.1.0 log", List.of("text", "json", "sarif")));
        spec.addOption(Options.flag("--strict", "warnings fail too"));
        spec.addOption(Options.flag("--fix", "first write what may be mended unasked, and say what"));
        spec.addOption(Options.flag("--watch", "go on, and on each change say what is found and what it did to the figures"));
        spec.addPositional(Options.files("specs and libraries"));
    }

    @Override
    public int run(ParseResult parsed, ProcessIo io) {
        List<String> files = parsed.matchedPositionalValue(0, List.of());
        List<Path> paths = files.stream().map(file -> Paths.of(file, io)).toList();
        SpecSession session = SpecSession.start();
        boolean watch = Options.given(parsed, "--watch");
        if (watch && (Options.given(parsed, "--fix") || !Options.value(parsed, "--format").orElse("text").equals("text"))) {
            throw new WrongUsage("--watch goes with text, and mends nothing");
        }
        if (watch) {
            return new Watching(session, paths, changes.get(), io).run();
        }
        int written = Options.given(parsed, "--fix") ? Mending.all(session, paths, io) : ExitCode.FINE;
        int checked = check(session, paths, parsed, io);
        return checked == ExitCode.FINE || written == ExitCode.FAULT ? written : checked;
    }

    private static int check(SpecSession session, List<Path> paths, ParseResult parsed, ProcessIo io) {
        Set<TextFinding> findings = new LinkedHashSet<>();
        Map<Path, String> texts = new LinkedHashMap<>();
        boolean unread = false;
        int fault = ExitCode.FINE;
        for (Path path : paths) {
            Optional<Checked> done = check(session, path, io);
            if (done.isEmpty()) {
                fault = ExitCode.FAULT;
                continue;
            }
            Checked checked = done.get();
            findings.addAll(checked.findings());
            texts.putAll(checked.texts());
            unread |= !checked.read();
        }
        print(new ArrayList<>(findings), texts, parsed, io);
        return fault != ExitCode.FINE ? fault : unread ? ExitCode.FILE : fails(findings, Options.given(parsed, "--strict")) ? ExitCode.ERRORS : ExitCode.FINE;
    }

    /** One file that the program fails on must not cost the findings of the others. */
    private static Optional<Checked> check(SpecSession session, Path path, ProcessIo io) {
        try {
            return Optional.of(session.check(path, () -> false));
        } catch (RuntimeException fault) {
            FaultReport.write(fault, new String[] {"check", path.toString()}, io);
            return Optional.empty();
        }
    }

    private static boolean fails(Set<TextFinding> findings, boolean strict) {
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR || strict && finding.severity() == Severity.WARNING);
    }

    private static void print(List<TextFinding> findings, Map<Path, String> texts, ParseResult parsed, ProcessIo io) {
        PathNames names = new PathNames(io.directory());
        switch (Options.value(parsed, "--format").orElse("text")) {
            case "json" -> io.out().print(new FindingsJson(names).print(findings));
            case "sarif" -> io.out().print(new FindingsSarif(names, texts, Version.words()).print(findings));
            default -> FindingsOutput.toResult(findings, texts, io);
        }
    }
}
