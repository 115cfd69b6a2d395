package mouldwright.workbench;

import java.nio.file.Path;
import java.util.List;
import mouldwright.workbench.editor.SpecFolders;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.eclipse.ui.internal.ide.application.IDEWorkbenchAdvisor;

/** What this workbench opens with, and that it remembers its windows from run to run. */
final class PlugWorkbench extends IDEWorkbenchAdvisor {

    private final List<Path> asked;
    private final Doorbell bell;

    /**
     * @param asked files and folders to open at first
     * @param bell  by which others are asked for later
     */
    PlugWorkbench(List<Path> asked, Doorbell bell) {
        this.asked = asked;
        this.bell = bell;
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        super.initialize(configurer);
        configurer.setSaveAndRestore(true);
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return PlugPerspective.ID;
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new PlugWindow(this, configurer);
    }

    @Override
    public void postStartup() {
        super.postStartup();
        new SpecFolders().open(asked);
        bell.listen(paths -> PlatformUI.getWorkbench().getDisplay().asyncExec(() -> {
            toFront();
            new SpecFolders().open(paths);
        }));
    }

    private static void toFront() {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        if (window == null)
            return;
        Shell shell = window.getShell();
        shell.setMinimized(false);
        shell.forceActive();
    }
}
