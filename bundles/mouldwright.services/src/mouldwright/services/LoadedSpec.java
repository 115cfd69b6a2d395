package mouldwright.services;

import com.google.inject.Injector;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.model.Document;
import mouldwright.report.Finding;
import mouldwright.report.Severity;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;
import org.eclipse.xtext.validation.IResourceValidator;

/**
 * A spec in memory with the libraries it uses.
 *
 * @param file     the spec
 * @param document its model
 * @param findings of its text, and the errors of the libraries it uses
 * @param texts    that were read: the spec's own first
 */
record LoadedSpec(Path file, Optional<Document> document, List<Finding> findings, Map<Path, String> texts) {

    static LoadedSpec load(Injector injector, Path file, String text) {
        XtextResource resource = parse(injector, file, text);
        IResourceValidator validator = resource.getResourceServiceProvider().getResourceValidator();
        List<Finding> findings = new ArrayList<>();
        validator.validate(resource, CheckMode.ALL, CancelIndicator.NullImpl).forEach(issue -> findings.add(FindingMaker.of(issue, file)));
        Map<Path, String> texts = new LinkedHashMap<>();
        texts.put(file, text);
        List<Resource> all = new ArrayList<>(resource.getResourceSet().getResources());
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i) != resource && all.get(i) instanceof XtextResource library) {
                Path place = SpecPlaces.file(library.getURI());
                texts.put(place, library.getParseResult().getRootNode().getText());
                validator.validate(library, CheckMode.ALL, CancelIndicator.NullImpl).stream().map(issue -> FindingMaker.of(issue, place))
                        .filter(finding -> finding.severity() == Severity.ERROR).forEach(findings::add);
                // Validating a library may have loaded the libraries it uses in turn.
                resource.getResourceSet().getResources().stream().filter(r -> !all.contains(r)).forEach(all::add);
            }
        }
        Optional<Document> document = resource.getContents().isEmpty() || !(resource.getContents().getFirst() instanceof Document d)
                ? Optional.empty() : Optional.of(d);
        return new LoadedSpec(file, document, findings, texts);
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
}
