package mouldwright.services.serve;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import mouldwright.check.Severity;
import mouldwright.report.TextFinding;
import mouldwright.services.Checked;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.services.LanguageClient;

/**
 * Tells the client what is found. A text that is open has the findings of its own examination; one that is not, such as a library, those of all open
 * texts that use it.
 */
final class Publisher {

    private static final String SOURCE = "mouldwright";

    private volatile LanguageClient client;
    private final Map<String, String> uris = new ConcurrentHashMap<>();
    private final Map<Path, Checked> checked = new TreeMap<>();
    private final Set<Path> told = new TreeSet<>();

    void connect(LanguageClient connected) {
        client = connected;
    }

    /** Remembers how the client names a file, so that it is told so. */
    void named(Path file, String uri) {
        uris.put(file.toString(), uri);
    }

    String uri(Path file) {
        return uris.getOrDefault(file.toString(), Uris.of(file));
    }

    synchronized void found(Checked now, int version) {
        Checked before = checked.put(now.file(), now);
        client.publishDiagnostics(params(now.file(), now.findings(), Optional.of(version)));
        Set<Path> others = files(now);
        if (before != null) {
            others.addAll(files(before));
        }
        others.stream().filter(file -> !checked.containsKey(file)).forEach(this::tellOfOther);
    }

    synchronized void closed(Path file) {
        Checked before = checked.remove(file);
        tellOfOther(file);
        if (before != null) {
            files(before).stream().filter(other -> !checked.containsKey(other)).forEach(this::tellOfOther);
        }
        uris.remove(file.toString());
    }

    private void tellOfOther(Path file) {
        Set<TextFinding> findings = new LinkedHashSet<>();
        checked.values().forEach(one -> one.findings().stream().filter(finding -> finding.file().equals(file)).forEach(findings::add));
        if (!findings.isEmpty() || told.contains(file)) {
            client.publishDiagnostics(params(file, List.copyOf(findings), Optional.empty()));
        }
    }

    private static Set<Path> files(Checked one) {
        Set<Path> files = new TreeSet<>();
        one.findings().stream().map(TextFinding::file).filter(file -> !file.equals(one.file())).forEach(files::add);
        return files;
    }

    private PublishDiagnosticsParams params(Path file, List<TextFinding> findings, Optional<Integer> version) {
        told.add(file);
        Optional<Positions> positions = checked.values().stream().map(one -> one.texts().get(file)).filter(text -> text != null).findFirst().map(Positions::new);
        List<Diagnostic> diagnostics = findings.stream().filter(finding -> finding.file().equals(file)).map(finding -> diagnostic(finding, positions.orElse(new Positions("")))).toList();
        PublishDiagnosticsParams params = new PublishDiagnosticsParams(uri(file), diagnostics);
        version.ifPresent(params::setVersion);
        return params;
    }

    static Diagnostic diagnostic(TextFinding finding, Positions positions) {
        String message = finding.message() + finding.fix().map(fix -> "\n" + fix).orElse("");
        Diagnostic diagnostic = new Diagnostic(positions.range(positions.offset(finding.line(), finding.column()), finding.length()), message,
                severity(finding.severity()), SOURCE, finding.code());
        return diagnostic;
    }

    private static DiagnosticSeverity severity(Severity severity) {
        return switch (severity) {
            case ERROR -> DiagnosticSeverity.Error;
            case WARNING -> DiagnosticSeverity.Warning;
            case INFO -> DiagnosticSeverity.Information;
        };
    }
}
