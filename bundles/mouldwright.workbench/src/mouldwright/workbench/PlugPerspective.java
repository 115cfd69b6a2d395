package mouldwright.workbench;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The text in the middle, the plug around it. */
public final class PlugPerspective implements IPerspectiveFactory {

    /** How the perspective is named in `plugin.xml`. */
    static final String ID = "mouldwright.workbench.perspective";

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.addView(IPageLayout.ID_PROJECT_EXPLORER, IPageLayout.LEFT, 0.18f, layout.getEditorArea());
        layout.addView(IPageLayout.ID_PROBLEM_VIEW, IPageLayout.BOTTOM, 0.75f, layout.getEditorArea());
        layout.addView("mouldwright.views.surface", IPageLayout.RIGHT, 0.6f, layout.getEditorArea());
        layout.addView(IPageLayout.ID_OUTLINE, IPageLayout.BOTTOM, 0.6f, IPageLayout.ID_PROJECT_EXPLORER);
    }
}
