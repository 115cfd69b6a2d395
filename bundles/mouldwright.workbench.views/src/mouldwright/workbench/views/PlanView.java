package mouldwright.workbench.views;

import java.util.function.Consumer;
import mouldwright.workbench.editor.Focus;
import mouldwright.workbench.editor.Shown;
import org.eclipse.ui.part.ViewPart;

/** A view of the plan of the spec in front. It is told on the thread of the window what to show. */
abstract class PlanView extends ViewPart {

    private final Consumer<Shown> shower = this::show;

    /** Shows a plan, or the last one greyed. */
    abstract void show(Shown shown);

    /** To be called once the view's controls are there. */
    final void follow() {
        Focus.of(getSite().getWorkbenchWindow()).follow(shower);
    }

    /** Takes the cursor to the line that made what was picked. */
    final void goTo(int line) {
        Focus.of(getSite().getWorkbenchWindow()).show(line);
    }

    @Override
    public void dispose() {
        Focus.of(getSite().getWorkbenchWindow()).leave(shower);
        super.dispose();
    }
}
