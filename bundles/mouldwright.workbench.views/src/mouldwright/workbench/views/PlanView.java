package mouldwright.workbench.views;

import java.util.function.Consumer;
import mouldwright.workbench.editor.Focus;
import mouldwright.workbench.editor.Shown;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/**
 * A view of the plan of the spec in front. It is told on the thread of the window what to show, and works out what takes longer through its
 * {@link #background()}.
 */
public abstract class PlanView extends ViewPart {

    /** Said where there is nothing to show yet. */
    public static final String NO_SPEC = "Open a spec, and what it comes to is shown here.";
    /** Said where a plan is missing. */
    public static final String NO_PLAN = "Shown here once the spec in front can be planned. The Problems view says what is in the way.";
    /** Said where an older plan is shown. */
    public static final String LAST_GOOD = "The spec has errors: this is the last good plan.";

    private final Consumer<Shown> shower = this::show;
    private Background background;
    private Focus focus;

    @Override
    public final void createPartControl(Composite parent) {
        create(parent);
        background = new Background(parent);
        focus = Focus.of(getSite().getWorkbenchWindow());
        focus.follow(shower);
    }

    /** Makes the controls. */
    protected abstract void create(Composite parent);

    /** Shows a plan, or the last one paled, or says that there is none. Called whenever plan or cursor change; it must be short. */
    protected abstract void show(Shown shown);

    /** For what takes longer than a glance. */
    protected final Background background() {
        return background;
    }

    /** Takes the cursor of the text to what made something. @param key as drawings give it to their marks */
    protected final void goTo(String key) {
        focus.show(key);
    }

    /** Takes the cursor of the text to a line, from 1. */
    protected final void goTo(int line) {
        focus.show(line);
    }

    /** What to say of it: why there is nothing, or that it is old. */
    protected static String notice(Shown shown) {
        return shown.file().isEmpty() ? NO_SPEC : shown.plan().isEmpty() ? shown.state() == Shown.State.BEHIND ? "" : NO_PLAN
                : shown.state() == Shown.State.BROKEN ? LAST_GOOD : "";
    }

    @Override
    public void dispose() {
        if (focus != null)
            focus.leave(shower);
        super.dispose();
    }
}
