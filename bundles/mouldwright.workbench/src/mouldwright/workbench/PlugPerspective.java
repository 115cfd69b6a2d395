package mouldwright.workbench;

import java.util.Arrays;
import java.util.List;
import org.eclipse.core.runtime.Platform;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The text in the middle, the plug around it. */
public final class PlugPerspective implements IPerspectiveFactory {

    /** How the perspective is named in `plugin.xml`. */
    static final String ID = "mouldwright.workbench.perspective";

    private static final String BESIDE = "mouldwright.drawings";
    private static final String BELOW = "mouldwright.figures";

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.addView(IPageLayout.ID_PROJECT_EXPLORER, IPageLayout.LEFT, 0.18f, layout.getEditorArea());
        layout.addView(IPageLayout.ID_OUTLINE, IPageLayout.BOTTOM, 0.6f, IPageLayout.ID_PROJECT_EXPLORER);
        IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, 0.72f, layout.getEditorArea());
        below.addView(IPageLayout.ID_PROBLEM_VIEW);
        views(BELOW).forEach(below::addView);
        IFolderLayout beside = layout.createFolder("beside", IPageLayout.RIGHT, 0.5f, layout.getEditorArea());
        views(BESIDE).forEach(beside::addView);
        views(BESIDE).forEach(layout::addShowViewShortcut);
        views(BELOW).forEach(layout::addShowViewShortcut);
    }

    /** The views of a kind, in the order of their declaration. */
    private static List<String> views(String category) {
        return Arrays.stream(Platform.getExtensionRegistry().getConfigurationElementsFor("org.eclipse.ui.views"))
                .filter(element -> element.getName().equals("view") && category.equals(element.getAttribute("category"))).map(element -> element.getAttribute("id")).toList();
    }
}
