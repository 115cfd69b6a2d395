package mouldwright.workbench.editor;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import mouldwright.project.Project;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IWorkspaceRoot;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;

/**
 * Brings folders of specs into the workbench without writing anything in them: a project of the data area holds a link to each.
 */
public final class SpecFolders {

    private static final String PROJECT = "Specs";

    /** Opens files in editors and shows folders beside them. The folder shown with a file is its project's root. */
    public void open(List<Path> paths) {
        if (paths.isEmpty())
            return;
        WorkspaceJob job = new WorkspaceJob("Opening specs") {
            @Override
            public IStatus runInWorkspace(IProgressMonitor monitor) throws CoreException {
                for (Path path : paths)
                    open(path, monitor);
                return Status.OK_STATUS;
            }
        };
        job.setRule(ResourcesPlugin.getWorkspace().getRoot());
        job.schedule();
    }

    private static void open(Path path, IProgressMonitor monitor) throws CoreException {
        if (!Files.exists(path))
            throw new CoreException(Status.error("There is no file " + path));
        Path folder = Files.isDirectory(path) ? path : Project.of(path).root();
        IFolder link = link(folder, monitor);
        if (Files.isDirectory(path))
            return;
        IFile file = link.getFile(folder.relativize(path).toString());
        PlatformUI.getWorkbench().getDisplay().asyncExec(() -> edit(file));
    }

    private static IFolder link(Path folder, IProgressMonitor monitor) throws CoreException {
        IWorkspaceRoot root = ResourcesPlugin.getWorkspace().getRoot();
        IProject project = root.getProject(PROJECT);
        if (!project.exists())
            project.create(monitor);
        if (!project.isOpen())
            project.open(monitor);
        for (IResource member : project.members())
            if (member instanceof IFolder known && known.isLinked() && folder.toUri().equals(known.getLocationURI())) {
                known.refreshLocal(IResource.DEPTH_INFINITE, monitor);
                return known;
            }
        IFolder link = project.getFolder(freeName(project, folder.getFileName() == null ? "root" : folder.getFileName().toString()));
        link.createLink(folder.toUri(), IResource.NONE, monitor);
        return link;
    }

    private static String freeName(IProject project, String wanted) {
        String name = wanted;
        for (int i = 2; project.exists(IPath.fromPortableString(name)); i++)
            name = wanted + " " + i;
        return name;
    }

    private static void edit(IFile file) {
        IWorkbenchPage page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
        try {
            IDE.openEditor(page, file);
        } catch (PartInitException e) {
            ILog.get().error("The editor of " + file.getName() + " did not open", e);
        }
    }
}
