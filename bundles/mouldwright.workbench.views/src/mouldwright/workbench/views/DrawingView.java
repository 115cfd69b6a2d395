package mouldwright.workbench.views;

import java.util.Optional;
import mouldwright.drawing.Drawing;
import mouldwright.plan.BuildPlan;
import mouldwright.workbench.editor.Shown;
import mouldwright.workbench.views.paint.DrawingCanvas;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.swt.widgets.Composite;

/**
 * A view that shows one drawing of the plan, which can be zoomed, moved, printed and written to a file. A click on a mark takes the cursor to
 * the line that made it, and what the cursor stands in stands out. A view of its own is a subclass that makes the drawing, and one line in
 * {@code plugin.xml}.
 */
public abstract class DrawingView extends PlanView {

    private DrawingCanvas canvas;
    private Shown now = Shown.NOTHING;
    private Optional<Object> drawn = Optional.empty();

    /** What is drawn of a plan: its name among drawings, and the drawing. */
    public record Named(String name, Drawing drawing) { }

    private record Wanted(BuildPlan plan, String code, Object choice) {
        @Override public boolean equals(Object other) {
            return other instanceof Wanted(BuildPlan theirs, String sign, Object chosen) && theirs == plan && sign.equals(code) && chosen.equals(choice);
        }

        @Override public int hashCode() {
            return code.hashCode();
        }
    }

    private Optional<Named> result = Optional.empty();

    /**
     * What of the plan is to be drawn now, such as the name of the station at the cursor. Called on the thread of the window, whenever the cursor moves; it must be
     * short. A new drawing is made when it differs from the one before.
     */
    protected Object choice(Shown shown) {
        return "";
    }

    /**
     * Draws it, on a thread of its own.
     *
     * @param plan   of which
     * @param code   of plug and revision, to be written on it
     * @param choice as {@link #choice} gave it
     * @return empty if the plan does not come that far
     */
    protected abstract Optional<Named> draw(BuildPlan plan, String code, Object choice);

    /** Key of what stands out: what the cursor stands in. */
    protected String lit(Shown shown) {
        return shown.about();
    }

    /** What is said where the plan does not come that far. */
    protected String missing() {
        return "The plan does not come that far.";
    }

    @Override
    protected void create(Composite parent) {
        canvas = new DrawingCanvas(parent, this::picked);
        IMenuManager menu = getViewSite().getActionBars().getMenuManager();
        menu.add(new ExportDrawing(getSite().getShell(), this::shown));
        menu.add(new PrintDrawing(getSite().getShell(), this::shown));
    }

    /** Something was picked. It takes the cursor to its line. */
    protected void picked(String key) {
        goTo(key);
    }

    @Override
    protected void show(Shown shown) {
        now = shown;
        if (shown.plan().isEmpty()) {
            drawn = Optional.empty();
            result = Optional.empty();
            tell();
            return;
        }
        Wanted wanted = new Wanted(shown.plan().get(), shown.code(), choice(shown));
        if (drawn.filter(wanted::equals).isPresent()) {
            tell();
            return;
        }
        drawn = Optional.of(wanted);
        background().run(getTitle(), () -> draw(wanted.plan(), wanted.code(), wanted.choice()), made -> {
            result = made;
            tell();
        });
        tell();
    }

    private void tell() {
        boolean old = now.state() == Shown.State.BROKEN;
        canvas.show(result.map(Named::drawing), lit(now), now.plan().isPresent() && result.isEmpty() && !old ? missing() : notice(now), old);
    }

    /** What is shown; empty for nothing. */
    public Optional<Named> shown() {
        return result;
    }

    @Override
    public void setFocus() {
        canvas.setFocus();
    }
}
