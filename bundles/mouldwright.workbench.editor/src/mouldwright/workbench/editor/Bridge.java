package mouldwright.workbench.editor;

import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.ResourcesPlugin;

/** Puts the language to work for the editors, when the first spec is opened and not before. */
final class Bridge {

    private static boolean started;

    private Bridge() { }

    /** Starts it once. */
    static synchronized void start() {
        if (started)
            return;
        started = true;
        LiveSpecs.all().listen(new FindingMarkers());
        new DocumentTracker().start();
        ResourcesPlugin.getWorkspace().addResourceChangeListener(new DiskTracker(), IResourceChangeEvent.POST_CHANGE);
    }
}
