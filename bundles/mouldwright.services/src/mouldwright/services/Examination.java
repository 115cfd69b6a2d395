package mouldwright.services;

import com.google.inject.Injector;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import mouldwright.check.Severity;
import mouldwright.plan.BuildPlan;
import mouldwright.project.Project;
import mouldwright.report.TextFinding;
import org.eclipse.xtext.resource.XtextResourceSet;

/** Looks at one text in two passes: at the text first, which is cheap, and at its plans after, where it has no errors. */
final class Examination {

    private final Injector injector;
    private final Project project;
    private final Path file;
    private final String text;
    private final BooleanSupplier cancelled;
    private final List<TextFinding> findings = new ArrayList<>();
    private final Map<String, BuildPlan> plans = new LinkedHashMap<>();
    private final Map<Path, String> texts = new LinkedHashMap<>();
    private Optional<LoadedSpec> spec = Optional.empty();

    Examination(Injector injector, Project project, Path file, String text, BooleanSupplier cancelled) {
        this.injector = injector;
        this.project = project;
        this.file = file;
        this.text = text;
        this.cancelled = cancelled;
        texts.put(file, text);
    }

    /** The first pass.
     *  @param set       takes the text and the libraries it uses
     *  @param libraries errors of the libraries already in the set */
    void examineText(XtextResourceSet set, LibraryFindings libraries) {
        project.faults().forEach(fault -> findings.add(FindingMaker.of(fault)));
        if (text.isBlank()) {
            findings.add(TextFinding.ofFile(Codes.EMPTY, Severity.WARNING, "there is nothing in this file; a spec begins with `plug Name {`", file));
        }
        Optional<TextFinding> nesting = Nesting.finding(file, text);
        if (nesting.isPresent()) {
            findings.add(nesting.get());
            return;
        }
        guarded(() -> {
            LoadedSpec loaded = LoadedSpec.load(injector, set, file, text, libraries, cancelled);
            spec = Optional.of(loaded);
            findings.addAll(loaded.findings());
            texts.putAll(loaded.texts());
        });
    }

    /** Whether there is something to plan. */
    boolean canBePlanned() {
        return spec.isPresent() && !hasErrors(findings);
    }

    /** The second pass, for which the plans may have been worked out elsewhere. */
    void examinePlans() {
        if (canBePlanned()) {
            guarded(() -> {
                findings.addAll(spec.get().planFindings());
                texts.putAll(spec.get().texts());
                if (!hasErrors(findings)) {
                    plans.putAll(spec.get().plans());
                }
            });
        }
    }

    /** The text in memory; none where it is nested too deeply to be read. */
    Optional<LoadedSpec> spec() {
        return spec;
    }

    /** What came of it so far. */
    Checked checked() {
        List<TextFinding> weighed = new SeverityRules(project.settings()).apply(findings).stream().distinct().sorted(TextFinding.BY_PLACE).toList();
        return new Checked(file, project, true, weighed, hasErrors(weighed) ? Map.of() : plans, texts, Revision.of(texts, new ProjectNames(project)));
    }

    private void guarded(Runnable work) {
        try {
            work.run();
        } catch (StackOverflowError | RuntimeException e) {
            if (!comesOfDepth(e)) {
                throw e;
            }
            spec = Optional.empty();
            findings.add(TextFinding.ofFile(Codes.TOO_DEEP, Severity.ERROR, "a formula or a block is nested too deeply to be followed", file));
        }
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

    private static boolean hasErrors(List<TextFinding> findings) {
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
    }
}
