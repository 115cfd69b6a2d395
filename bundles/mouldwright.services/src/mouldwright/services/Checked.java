package mouldwright.services;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mouldwright.plan.BuildPlan;
import mouldwright.project.Project;
import mouldwright.report.TextFinding;
import mouldwright.check.Severity;

/**
 * What came of checking a spec.
 *
 * @param file     the spec, absolute and normal
 * @param project  it belongs to
 * @param read     whether the file could be read; where not, one finding says why
 * @param findings sorted by place
 * @param plans    of its plugs by name, in the order of the text; none where there is an error
 * @param texts    that were read, by absolute path: the spec's own first, then libraries, tables and drawings
 * @param revision fingerprint of these texts; the same texts give the same one, wherever they lie
 */
public record Checked(Path file, Project project, boolean read, List<TextFinding> findings, Map<String, BuildPlan> plans, Map<Path, String> texts,
        String revision) {

    /** Takes copies. */
    public Checked {
        findings = List.copyOf(findings);
        plans = Collections.unmodifiableMap(new LinkedHashMap<>(plans));
        texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
    }

    /** Whether a finding is an error. */
    public boolean hasErrors() {
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
    }
}
