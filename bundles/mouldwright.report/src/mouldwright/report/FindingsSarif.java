package mouldwright.report;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.check.CheckPage;
import mouldwright.check.Severity;
import mouldwright.check.TextEdit;
import mouldwright.check.TextFix;

/** Findings as a SARIF 2.1.0 log (OASIS standard), which build servers and editors read: one run, a rule for each code found with its page, a result
 *  for each finding, and its fixes. Columns count UTF-16 units, as Java's strings do. */
public final class FindingsSarif {

    private final PathNames names;
    private final SourceLines lines;
    private final String version;

    /**
     * A writer of findings.
     *
     * @param names   how files are named
     * @param texts   of the files that were read, by absolute path
     * @param version of the program
     */
    public FindingsSarif(PathNames names, Map<Path, String> texts, String version) {
        this.names = names;
        this.lines = new SourceLines(texts);
        this.version = version;
    }

    /** The whole file. */
    public String print(List<TextFinding> findings) {
        List<String> rules = findings.stream().map(TextFinding::code).distinct().sorted().toList();
        return JsonFile.print(json -> json.object(log -> log.member("$schema", "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json")
                .member("version", "2.1.0").array("runs", List.of(findings), (runs, all) -> runs.object(run -> run
                        .member("tool", tool -> tool.object(t -> t.member("driver", driver -> driver.object(d -> d.member("name", "Mouldwright").member("version", version)
                                .array("rules", rules, FindingsSarif::rule)))))
                        .member("columnKind", "utf16CodeUnits")
                        .array("results", all, (results, finding) -> result(results, finding, rules.indexOf(finding.code())))))));
    }

    private static void rule(JsonFile json, String code) throws IOException {
        json.object(rule -> {
            rule.member("id", code);
            Optional<CheckPage> page = CheckPage.of(code);
            if (page.isPresent()) {
                rule.member("shortDescription", text -> message(text, page.get().title()))
                        .member("fullDescription", text -> message(text, page.get().cause() + " " + page.get().consequence()))
                        .member("help", text -> message(text, page.get().remedy()));
            }
        });
    }

    private void result(JsonFile json, TextFinding finding, int rule) throws IOException {
        json.object(result -> {
            result.member("ruleId", finding.code()).member("ruleIndex", rule).member("level", level(finding.severity()))
                    .member("message", text -> message(text, finding.message() + finding.fix().map(fix -> ". Fix: " + fix).orElse("")))
                    .array("locations", List.of(finding), (locations, one) -> locations.object(location -> location.member("physicalLocation", physical -> physical.object(
                            p -> p.member("artifactLocation", file -> file(file, one.file())).member("region", region -> region.object(
                                    r -> r.member("startLine", one.line()).member("startColumn", one.column()).member("endColumn", one.column() + one.length())))))));
            if (!finding.fixes().isEmpty()) {
                result.array("fixes", finding.fixes(), (fixes, fix) -> fix(fixes, finding.file(), fix));
            }
        });
    }

    private void fix(JsonFile json, Path file, TextFix fix) throws IOException {
        json.object(one -> one.member("description", text -> message(text, fix.title())).array("artifactChanges", List.of(fix), (changes, each) -> changes.object(
                change -> change.member("artifactLocation", location -> file(location, file)).array("replacements", fix.edits(), (edits, edit) -> replacement(edits, file, edit)))));
    }

    private void replacement(JsonFile json, Path file, TextEdit edit) throws IOException {
        SourceLines.Place from = lines.place(file, edit.offset());
        SourceLines.Place to = lines.place(file, edit.end());
        json.object(replacement -> replacement.member("deletedRegion", region -> region.object(r -> r.member("startLine", from.line()).member("startColumn", from.column())
                .member("endLine", to.line()).member("endColumn", to.column()))).member("insertedContent", content -> message(content, edit.text())));
    }

    private static void message(JsonFile json, String text) throws IOException {
        json.object(message -> message.member("text", text));
    }

    private void file(JsonFile json, Path file) throws IOException {
        json.object(location -> location.member("uri", uri(names.of(file))));
    }

    private static String uri(String name) {
        try {
            return new URI(name.startsWith("/") ? "file" : null, name.startsWith("/") ? "" : null, name, null).toASCIIString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException("a path that makes no address: " + name, e);
        }
    }

    private static String level(Severity severity) {
        return switch (severity) {
            case ERROR -> "error";
            case WARNING -> "warning";
            case INFO -> "note";
        };
    }
}
