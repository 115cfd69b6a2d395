package mouldwright.workbench.editor;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.check.Severity;
import mouldwright.report.TextFinding;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;

/** Puts findings beside the text and into the list of problems; those that stay are left where they are. */
final class FindingMarkers implements LiveSpecs.Listener {

    /** The kind of marker. */
    static final String TYPE = "mouldwright.workbench.editor.finding";
    /** Attribute that holds the code of the check. */
    static final String CODE = "code";

    private final Map<Path, Optional<LiveSpecs.Known>> waiting = new HashMap<>();

    @Override
    public void found(Path file, LiveSpecs.Known known) {
        put(file, Optional.of(known));
    }

    @Override
    public void closed(Path file) {
        put(file, Optional.empty());
    }

    private void put(Path file, Optional<LiveSpecs.Known> known) {
        synchronized (waiting) {
            boolean scheduled = !waiting.isEmpty();
            waiting.put(file, known);
            if (scheduled)
                return;
        }
        WorkspaceJob job = new WorkspaceJob("Findings") {
            @Override
            public IStatus runInWorkspace(IProgressMonitor monitor) throws CoreException {
                Map<Path, Optional<LiveSpecs.Known>> taken;
                synchronized (waiting) {
                    taken = Map.copyOf(waiting);
                    waiting.clear();
                }
                for (Map.Entry<Path, Optional<LiveSpecs.Known>> one : taken.entrySet())
                    for (IFile resource : ResourcesPlugin.getWorkspace().getRoot().findFilesForLocationURI(one.getKey().toUri()))
                        if (resource.exists())
                            mark(resource, one.getKey(), one.getValue());
                return Status.OK_STATUS;
            }
        };
        job.setSystem(true);
        job.setRule(ResourcesPlugin.getWorkspace().getRoot());
        job.schedule();
    }

    private static void mark(IFile resource, Path file, Optional<LiveSpecs.Known> known) throws CoreException {
        List<Map<String, Object>> wanted = new ArrayList<>();
        known.map(LiveSpecs.Known::checked).ifPresent(checked -> checked.findings().stream().filter(finding -> finding.file().equals(file))
                .forEach(finding -> wanted.add(attributes(finding, checked.texts().getOrDefault(file, "")))));
        for (IMarker marker : resource.findMarkers(TYPE, true, IResource.DEPTH_ZERO)) {
            Map<String, Object> there = marker.getAttributes();
            if (there == null || !wanted.remove(there))
                marker.delete();
        }
        for (Map<String, Object> attributes : wanted)
            resource.createMarker(TYPE, attributes);
    }

    private static Map<String, Object> attributes(TextFinding finding, String text) {
        Map<String, Object> attributes = new HashMap<>();
        attributes.put(IMarker.MESSAGE, finding.code() + "  " + finding.message());
        attributes.put(IMarker.SEVERITY, severity(finding.severity()));
        attributes.put(IMarker.LINE_NUMBER, finding.line());
        attributes.put(CODE, finding.code());
        attributes.put(IMarker.SOURCE_ID, "mouldwright");
        int start = TextPlaces.offset(text, finding.line(), finding.column());
        attributes.put(IMarker.CHAR_START, start);
        attributes.put(IMarker.CHAR_END, Math.min(text.length(), start + Math.max(1, finding.length())));
        return attributes;
    }

    private static int severity(Severity severity) {
        return switch (severity) {
            case ERROR -> IMarker.SEVERITY_ERROR;
            case WARNING -> IMarker.SEVERITY_WARNING;
            default -> IMarker.SEVERITY_INFO;
        };
    }
}
