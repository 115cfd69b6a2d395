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

/** What spoils the figures of those who use a library: its spoilt, and figures that no workshop meets. Each library is looked at once as long as it stays in memory. */
final class LibraryFindings {

    /** A figure that no workshop meets. */
    static final String UNMET = "MW930";

    private final Map<Resource, List<TextFinding>> known = new IdentityHashMap<>();

    List<TextFinding> of(Resource library, CancelIndicator cancelled) {
        List<TextFinding> spoilt = known.get(library);
        if (spoilt == null) {
            Path place = Path.of(library.getURI().toFileString());
            spoilt = ((XtextResource) library).getResourceServiceProvider().getResourceValidator().validate(library, CheckMode.NORMAL_AND_FAST, cancelled).stream()
                    .map(issue -> FindingMaker.of(issue, place)).filter(finding -> finding.severity() == Severity.ERROR || finding.code().equals(UNMET)).toList();
            known.put(library, spoilt);
        }
        return spoilt;
    }
}
