package mouldwright.workbench.editor;

import java.nio.file.Path;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IPath;

/** Tells the session of files that were saved, came or went: libraries, tables and drawings that open specs may use. */
final class DiskTracker implements IResourceChangeListener {

    @Override
    public void resourceChanged(IResourceChangeEvent event) {
        try {
            event.getDelta().accept(DiskTracker::look);
        } catch (CoreException e) {
            ILog.get().warn("Changes of files were not followed", e);
        }
    }

    private static boolean look(IResourceDelta delta) {
        IResource resource = delta.getResource();
        boolean changed = delta.getKind() != IResourceDelta.CHANGED || (delta.getFlags() & (IResourceDelta.CONTENT | IResourceDelta.REPLACED)) != 0;
        IPath location = resource.getLocation();
        if (resource instanceof IFile && changed && location != null)
            LiveSpecs.all().changedOnDisk(Path.of(location.toOSString()).toAbsolutePath().normalize());
        return true;
    }
}
