package mouldwright.services;

import com.google.inject.Injector;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import mouldwright.language.PlugStandaloneSetup;
import mouldwright.plan.BuildPlan;
import mouldwright.project.ContentSource;
import mouldwright.project.DiskSource;
import mouldwright.project.Project;
import mouldwright.project.ProjectFiles;
import mouldwright.project.ReadResult;
import mouldwright.report.TextFinding;
import mouldwright.check.Severity;

/**
 * The one session every front works with: the language set up once, and what is done with it. Not for use by several threads at once.
 */
public final class SpecSession {

    private final Injector injector;
    private final ContentSource source;

    private SpecSession(Injector injector, ContentSource source) {
        this.injector = injector;
        this.source = source;
    }

    /** The language, set up when it is first asked for and once in a process. */
    private static final class Language {
        private static final Injector INJECTOR = setUp();

        private static Injector setUp() {
            QuietLog.install();
            return new PlugStandaloneSetup().createInjectorAndDoEMFRegistration();
        }
    }

    /** A session for files on the disk; the first one sets the language up. */
    public static SpecSession start() {
        return new SpecSession(Language.INJECTOR, new DiskSource());
    }

    /**
     * Checks a spec: reads it through its project, checks the text, and where no error is found plans its plugs.
     *
     * @param file      the spec
     * @param cancelled asked often
     * @return what was found; a file that cannot be read is a finding too
     * @throws java.util.concurrent.CancellationException when cancelled
     */
    public Checked check(Path file, BooleanSupplier cancelled) {
        Path whole = file.toAbsolutePath().normalize();
        Project project = Project.of(whole, source);
        return switch (read(project, whole)) {
            case ReadResult.Refused(var reason, String message) -> {
                TextFinding finding = TextFinding.ofFile(Codes.UNREAD, Severity.ERROR, message, whole);
                yield new Checked(whole, project, false, List.of(finding), Map.of(), Map.of(), "");
            }
            case ReadResult.Text text -> check(project, whole, text.text(), cancelled);
        };
    }

    /**
     * Lays a spec out anew.
     *
     * @param file the spec
     */
    public Layout layOut(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        return switch (read(Project.of(whole, source), whole)) {
            case ReadResult.Refused(var reason, String message) ->
                    new Layout.Unread(TextFinding.ofFile(Codes.UNREAD, Severity.ERROR, message, whole));
            case ReadResult.Text text -> new LayoutWriter(injector).layOut(whole, text.text());
        };
    }

    private ReadResult read(Project project, Path file) {
        if (!file.startsWith(project.root()) || file.equals(project.root())) {
            return new ReadResult.Refused(ReadResult.Reason.FOLDER, "it is a folder");
        }
        String relative = project.root().relativize(file).toString().replace(file.getFileSystem().getSeparator(), "/");
        ReadResult result = new ProjectFiles(project, source, ProjectFiles.DEFAULT_LIMIT).resolve(relative);
        if (result instanceof ReadResult.Text && !relative.endsWith(ProjectFiles.SUFFIX)) {
            return new ReadResult.Refused(ReadResult.Reason.BAD_PATH,
                    "\"" + file.getFileName() + "\" is no spec by its name, which would end in " + ProjectFiles.SUFFIX);
        }
        return result;
    }

    private Checked check(Project project, Path file, String text, BooleanSupplier cancelled) {
        ProjectNames names = new ProjectNames(project);
        List<TextFinding> findings = new ArrayList<>();
        project.faults().forEach(fault -> findings.add(FindingMaker.of(fault)));
        if (text.isBlank()) {
            findings.add(TextFinding.ofFile(Codes.EMPTY, Severity.WARNING, "there is nothing in this file; a spec begins with `plug Name {`", file));
        }
        Map<String, BuildPlan> plans = new LinkedHashMap<>();
        Map<Path, String> texts = new LinkedHashMap<>(Map.of(file, text));
        Optional<TextFinding> nesting = Nesting.finding(file, text);
        if (nesting.isPresent()) {
            findings.add(nesting.get());
            return finish(project, file, findings, plans, texts, names);
        }
        try {
            LoadedSpec spec = LoadedSpec.load(injector, file, text, cancelled);
            findings.addAll(spec.findings());
            texts.putAll(spec.texts());
            if (findings.stream().noneMatch(finding -> finding.severity() == Severity.ERROR)) {
                plans.putAll(spec.plans());
            }
        } catch (StackOverflowError | RuntimeException e) {
            if (!comesOfDepth(e)) {
                throw e;
            }
            findings.add(TextFinding.ofFile(Codes.TOO_DEEP, Severity.ERROR, "a formula or a block is nested too deeply to be followed", file));
        }
        return finish(project, file, findings, plans, texts, names);
    }

    /** The parser wraps what it throws. */
    private static boolean comesOfDepth(Throwable e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof StackOverflowError) {
                return true;
            }
        }
        return false;
    }

    private static Checked finish(Project project, Path file, List<TextFinding> findings, Map<String, BuildPlan> plans, Map<Path, String> texts,
            ProjectNames names) {
        List<TextFinding> weighed = new SeverityRules(project.settings()).apply(findings).stream().distinct().sorted(TextFinding.BY_PLACE).toList();
        boolean errors = weighed.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
        return new Checked(file, project, true, weighed, errors ? Map.of() : plans, texts, Revision.of(texts, names));
    }
}
