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
import mouldwright.language.linking.Libraries;
import mouldwright.language.plan.Plans;
import mouldwright.language.plan.ProjectSections;
import mouldwright.language.remedy.Fixes;
import mouldwright.language.validation.SpecResourceValidator;
import mouldwright.model.Document;
import mouldwright.model.Plug;
import mouldwright.model.Use;
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
import org.eclipse.xtext.validation.Issue;

/** A spec in memory with the libraries it uses. */
final class LoadedSpec {

    private final Injector injector;
    private final Path file;
    private final XtextResource resource;
    private final CancelIndicator cancelled;
    private final LibraryFindings libraries;

    private LoadedSpec(Injector injector, Path file, XtextResource resource, LibraryFindings libraries, CancelIndicator cancelled) {
        this.injector = injector;
        this.file = file;
        this.resource = resource;
        this.libraries = libraries;
        this.cancelled = cancelled;
    }

    /** Reads a text. @param set takes it, with the libraries read before or while it is looked at */
    static LoadedSpec load(Injector injector, XtextResourceSet set, Path file, String text, LibraryFindings libraries, BooleanSupplier cancelled) {
        return new LoadedSpec(injector, file, parse(set, file, text), libraries, cancelled::getAsBoolean);
    }

    static XtextResource parse(XtextResourceSet set, Path file, String text) {
        XtextResource resource = (XtextResource) set.createResource(URI.createFileURI(file.toString()));
        try {
            resource.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
                    Map.of(XtextResource.OPTION_ENCODING, StandardCharsets.UTF_8.name()));
        } catch (IOException e) {
            throw new UncheckedIOException("memory refused to be read", e);
        }
        return resource;
    }

    XtextResource resource() {
        return resource;
    }

    /** What is found in its text, and the errors of the libraries it uses: what is wrong with a library is told there, and not again
     *  wherever it is used. */
    List<TextFinding> findings() {
        EcoreUtil2.resolveLazyCrossReferences(resource, cancelled);
        List<TextFinding> findings = new ArrayList<>();
        validator().validate(resource, CheckMode.NORMAL_AND_FAST, cancelled).forEach(issue -> findings.add(finding(issue)));
        List<Resource> all = resource.getResourceSet().getResources();
        // A library may use others in turn, which are read while it is looked at.
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i) != resource) {
                findings.addAll(libraries.of(all.get(i), cancelled));
            }
        }
        return findings;
    }

    /** What is found in its plans. To be asked for only where neither it nor its libraries have errors. */
    List<TextFinding> planFindings() {
        return ((SpecResourceValidator) validator()).validatePlans(resource, cancelled).stream().map(this::finding).toList();
    }

    private TextFinding finding(Issue issue) {
        return FindingMaker.of(issue, file, injector.getInstance(Fixes.class).of(resource, issue));
    }

    private IResourceValidator validator() {
        return resource.getResourceServiceProvider().getResourceValidator();
    }

    /** The plugs of the file, in the order of the text. */
    List<Plug> plugs() {
        return !resource.getContents().isEmpty() && resource.getContents().getFirst() instanceof Document document ? Plans.plugs(document) : List.of();
    }

    /** The texts that were read by now, by absolute path: the spec's own first, then libraries, tables and drawings. */
    Map<Path, String> texts() {
        Map<Path, String> texts = new LinkedHashMap<>();
        texts.put(file, "");
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
        Plans planned = injector.getInstance(Plans.class);
        plugs().forEach(plug -> planned.of(plug, cancelled::isCanceled).plan().ifPresent(plan -> plans.put(plan.plug(), plan)));
        return plans;
    }

    /** Whether the set holds nothing but the spec and the libraries it uses, by itself or through others. */
    boolean usesAllThatIsLoaded() {
        Libraries found = injector.getInstance(Libraries.class);
        Set<Resource> used = new HashSet<>();
        List<Resource> open = new ArrayList<>(List.of(resource));
        while (!open.isEmpty()) {
            Resource next = open.removeLast();
            if (used.add(next) && !next.getContents().isEmpty() && next.getContents().getFirst() instanceof Document document) {
                for (Use use : document.getUses()) {
                    if (use.getLibrary() != null && found.find(next, use.getLibrary()) instanceof Libraries.Found.Loaded(Document library)) {
                        open.add(library.eResource());
                    }
                }
            }
        }
        return used.containsAll(resource.getResourceSet().getResources());
    }

    private static Path place(Resource resource) {
        return Path.of(resource.getURI().toFileString());
    }
}
