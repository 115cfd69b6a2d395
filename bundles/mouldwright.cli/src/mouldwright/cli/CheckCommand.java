package mouldwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import mouldwright.report.TextFinding;
import mouldwright.report.FindingsJson;
import mouldwright.report.FindingsText;
import mouldwright.report.Ink;
import mouldwright.report.PathNames;
import mouldwright.check.Severity;
import mouldwright.services.Checked;
import mouldwright.services.ProcessIo;
import mouldwright.services.SpecSession;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Prints what is found in specs. The findings are the result, so they go to standard output. */
final class CheckCommand implements Subcommand {

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
        spec.addOption(Options.choice("--format", "text|json", "how: text, or a JSON array", List.of("text", "json")));
        spec.addOption(Options.flag("--strict", "warnings fail too"));
        spec.addPositional(Options.files("specs and libraries"));
    }

    @Override
    public int run(ParseResult parsed, ProcessIo io) {
        List<String> files = parsed.matchedPositionalValue(0, List.of());
        List<Path> paths = files.stream().map(file -> Paths.of(file, io)).toList();
        SpecSession session = SpecSession.start();
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
        if (Options.value(parsed, "--format").orElse("text").equals("json")) {
            io.out().print(new FindingsJson(names).print(findings));
        } else {
            boolean coloured = io.terminal() && !io.environment().containsKey("NO_COLOR");
            io.out().print(new FindingsText(names, texts, coloured ? Ink.TERMINAL : Ink.NONE).print(findings));
            io.out().print(FindingsText.summary(findings) + "\n");
        }
    }
}
