package mouldwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;

/** How the workbench opens. */
class OpeningTest {

    @Test void theWindowOpensInTheViewOfAPlug() {
        String[] label = new String[1];
        Display.getDefault().syncExec(() -> label[0] = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage().getPerspective().getLabel());
        assertEquals("Plug", label[0]);
    }
}
