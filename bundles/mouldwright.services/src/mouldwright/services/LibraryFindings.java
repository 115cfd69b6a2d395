package mouldwright.services;

import java.nio.file.Path;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import mouldwright.check.Severity;
import mouldwright.report.TextFinding;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;

/** The errors of libraries, each looked for once as long as the library stays in memory. */
final class LibraryFindings {

    private final Map<Resource, List<TextFinding>> known = new IdentityHashMap<>();

    List<TextFinding> of(Resource library, CancelIndicator cancelled) {
        List<TextFinding> errors = known.get(library);
        if (errors == null) {
            Path place = Path.of(library.getURI().toFileString());
            errors = ((XtextResource) library).getResourceServiceProvider().getResourceValidator().validate(library, CheckMode.NORMAL_AND_FAST, cancelled).stream()
                    .map(issue -> FindingMaker.of(issue, place)).filter(finding -> finding.severity() == Severity.ERROR).toList();
            known.put(library, errors);
        }
        return errors;
    }
}
