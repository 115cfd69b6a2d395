package mouldwright.workbench;

import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.internal.ide.application.IDEWorkbenchAdvisor;
import org.eclipse.ui.internal.ide.application.IDEWorkbenchWindowAdvisor;

/** The window: large enough for a spec with its drawings beside it. */
final class PlugWindow extends IDEWorkbenchWindowAdvisor {

    PlugWindow(IDEWorkbenchAdvisor workbench, IWorkbenchWindowConfigurer configurer) {
        super(workbench, configurer);
    }

    @Override
    public void preWindowOpen() {
        super.preWindowOpen();
        getWindowConfigurer().setInitialSize(new Point(1400, 900));
        getWindowConfigurer().setShowPerspectiveBar(false);
        getWindowConfigurer().setTitle("Mouldwright");
    }
}
