package mouldwright.services;

import com.google.inject.Injector;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import mouldwright.check.Severity;
import mouldwright.language.plan.Plans;
import mouldwright.language.plan.ProjectSections;
import mouldwright.model.Document;
import mouldwright.plan.BuildPlan;
import mouldwright.report.TextFinding;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;
import org.eclipse.xtext.validation.IResourceValidator;

/** A spec in memory with the libraries it uses. */
final class LoadedSpec {

    private final Injector injector;
    private final Path file;
    private final XtextResource resource;
    private final CancelIndicator cancelled;
    private final Set<Resource> checkedLibraries = new HashSet<>();

    private LoadedSpec(Injector injector, Path file, XtextResource resource, CancelIndicator cancelled) {
        this.injector = injector;
        this.file = file;
        this.resource = resource;
        this.cancelled = cancelled;
    }

    static LoadedSpec load(Injector injector, Path file, String text, BooleanSupplier cancelled) {
        return new LoadedSpec(injector, file, parse(injector, file, text), cancelled::getAsBoolean);
    }

    static XtextResource parse(Injector injector, Path file, String text) {
        XtextResource resource = (XtextResource) injector.getInstance(XtextResourceSet.class).createResource(URI.createFileURI(file.toString()));
        try {
            resource.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
                    Map.of(XtextResource.OPTION_ENCODING, StandardCharsets.UTF_8.name()));
        } catch (IOException e) {
            throw new UncheckedIOException("memory refused to be read", e);
        }
        return resource;
    }

    /** What is found in it, and the errors of the libraries it uses. Only where these have none is it planned: what is wrong with a library
     *  is told there, and not again wherever it is used. */
    List<TextFinding> findings() {
        EcoreUtil2.resolveLazyCrossReferences(resource, cancelled);
        List<TextFinding> findings = new ArrayList<>(libraryErrors());
        CheckMode mode = findings.isEmpty() ? CheckMode.ALL : CheckMode.NORMAL_AND_FAST;
        validator().validate(resource, mode, cancelled).forEach(issue -> findings.add(FindingMaker.of(issue, file)));
        findings.addAll(libraryErrors());
        return findings;
    }

    /** Of libraries not looked at before; a library may use others in turn, and validating may have loaded some. */
    private List<TextFinding> libraryErrors() {
        List<TextFinding> errors = new ArrayList<>();
        for (int i = 0; i < resource.getResourceSet().getResources().size(); i++) {
            Resource library = resource.getResourceSet().getResources().get(i);
            if (library != resource && checkedLibraries.add(library)) {
                validator().validate(library, CheckMode.NORMAL_AND_FAST, cancelled).stream().map(issue -> FindingMaker.of(issue, place(library)))
                        .filter(finding -> finding.severity() == Severity.ERROR).forEach(errors::add);
            }
        }
        return errors;
    }

    private IResourceValidator validator() {
        return resource.getResourceServiceProvider().getResourceValidator();
    }

    /** The texts that were read by now, by absolute path: the spec's own first, then libraries, tables and drawings. */
    Map<Path, String> texts() {
        Map<Path, String> texts = new LinkedHashMap<>();
        for (Resource one : resource.getResourceSet().getResources()) {
            if (one instanceof XtextResource text && text.getParseResult() != null) {
                texts.put(place(one), text.getParseResult().getRootNode().getText());
            }
        }
        texts.putAll(injector.getInstance(ProjectSections.class).texts(resource));
        return texts;
    }

    /** The plans of its plugs by name, in the order of the text. To be asked for only where it has no errors. */
    Map<String, BuildPlan> plans() {
        Map<String, BuildPlan> plans = new LinkedHashMap<>();
        if (!resource.getContents().isEmpty() && resource.getContents().getFirst() instanceof Document document) {
            Plans planned = injector.getInstance(Plans.class);
            Plans.plugs(document).forEach(plug -> planned.of(plug, cancelled::isCanceled).plan().ifPresent(plan -> plans.put(plan.plug(), plan)));
        }
        return plans;
    }

    private static Path place(Resource resource) {
        return Path.of(resource.getURI().toFileString());
    }
}
