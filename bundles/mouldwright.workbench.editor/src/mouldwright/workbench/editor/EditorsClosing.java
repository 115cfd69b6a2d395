package mouldwright.workbench.editor;

import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.IEditorReference;

/** Hears when an editor is closed, which the selection of a window does not say. */
record EditorsClosing(Runnable heard) implements IPartListener2 {

    @Override
    public void partClosed(IWorkbenchPartReference reference) {
        if (reference instanceof IEditorReference)
            heard.run();
    }
}
