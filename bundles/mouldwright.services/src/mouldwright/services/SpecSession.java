package mouldwright.services;

import com.google.inject.Injector;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import mouldwright.language.PlugStandaloneSetup;
import mouldwright.plan.BuildPlan;
import mouldwright.project.ContentSource;
import mouldwright.project.DiskSource;
import mouldwright.project.Project;
import mouldwright.project.ProjectFiles;
import mouldwright.project.ReadResult;
import mouldwright.report.Finding;
import mouldwright.report.Severity;

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

    /** Sets the language up, for files on the disk. */
    public static SpecSession start() {
        QuietLog.install();
        return new SpecSession(new PlugStandaloneSetup().createInjectorAndDoEMFRegistration(), new DiskSource());
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
                Finding finding = Finding.ofFile(Codes.UNREAD, Severity.ERROR, message, whole);
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
                    new Layout.Unread(Finding.ofFile(Codes.UNREAD, Severity.ERROR, message, whole));
            case ReadResult.Text text -> new LayoutWriter(injector).layOut(whole, text.text());
        };
    }

    private ReadResult read(Project project, Path file) {
        if (!file.startsWith(project.root()) || file.equals(project.root())) {
            return new ReadResult.Refused(ReadResult.Reason.FOLDER, "it is a folder");
        }
        String relative = project.root().relativize(file).toString().replace(file.getFileSystem().getSeparator(), "/");
        return new ProjectFiles(project, source, ProjectFiles.DEFAULT_LIMIT).resolve(relative);
    }

    private Checked check(Project project, Path file, String text, BooleanSupplier cancelled) {
        ProjectNames names = new ProjectNames(project);
        List<Finding> findings = new ArrayList<>();
        project.faults().forEach(fault -> findings.add(FindingMaker.of(fault)));
        if (text.isBlank()) {
            findings.add(Finding.ofFile(Codes.EMPTY, Severity.WARNING, "there is nothing in this file; a spec begins with `plug Name {`", file));
        }
        LoadedSpec spec;
        try {
            spec = LoadedSpec.load(injector, file, text);
            findings.addAll(spec.findings());
        } catch (StackOverflowError e) {
            findings.add(Finding.ofFile(Codes.TOO_DEEP, Severity.ERROR, "brackets or blocks are nested too deeply to be followed", file));
            return finish(project, file, findings, Map.of(), Map.of(file, text), names);
        }
        Map<String, BuildPlan> plans = new LinkedHashMap<>();
        if (findings.stream().noneMatch(finding -> finding.severity() == Severity.ERROR)) {
            PlugPlanner planner = new PlugPlanner(spec, new SpecPlaces(names, spec.texts()), cancelled);
            plans.putAll(planner.plan());
            findings.addAll(planner.findings());
        }
        return finish(project, file, findings, plans, spec.texts(), names);
    }

    private static Checked finish(Project project, Path file, List<Finding> findings, Map<String, BuildPlan> plans, Map<Path, String> texts,
            ProjectNames names) {
        List<Finding> weighed = new SeverityRules(project.settings()).apply(findings).stream().distinct().sorted(Finding.BY_PLACE).toList();
        boolean errors = weighed.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
        return new Checked(file, project, true, weighed, errors ? Map.of() : plans, texts, Revision.of(texts, names));
    }
}
