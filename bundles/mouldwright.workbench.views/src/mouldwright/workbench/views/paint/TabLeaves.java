package mouldwright.workbench.views.paint;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/** Lets the tab key leave a canvas that takes all other keys for itself; to be added for {@link SWT#Traverse}. */
public final class TabLeaves implements Listener {

    @Override
    public void handleEvent(Event event) {
        event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS;
    }
}
