package mouldwright.services;

import java.util.ArrayList;
import java.util.List;
import mouldwright.project.ProjectSettings;
import mouldwright.project.SeveritySetting;
import mouldwright.report.TextFinding;
import mouldwright.check.Severity;

/** What a project makes of findings. An error stays one: with errors there is no plan, so there is nothing to soften it to. */
final class SeverityRules {

    private final ProjectSettings settings;

    SeverityRules(ProjectSettings settings) {
        this.settings = settings;
    }

    List<TextFinding> apply(List<TextFinding> findings) {
        List<TextFinding> weighed = new ArrayList<>();
        for (TextFinding finding : findings) {
            SeveritySetting setting = settings.severities().get(finding.code());
            if (setting == null || finding.severity() == Severity.ERROR) {
                weighed.add(finding);
            } else if (setting != SeveritySetting.OFF) {
                weighed.add(finding.weighing(severity(setting)));
            }
        }
        return weighed;
    }

    private static Severity severity(SeveritySetting setting) {
        return switch (setting) {
            case ERROR -> Severity.ERROR;
            case WARNING -> Severity.WARNING;
            case INFO, OFF -> Severity.INFO;
        };
    }
}
