package mouldwright.workbench.views;

import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** Work for one view off the thread of the window, one piece at a time. What is overtaken by a later piece is dropped. */
public final class Background {

    private final Control control;
    private final Display display;
    private final ISchedulingRule oneAtATime = new Alone();
    private volatile int latest;

    /** @param control without which nobody waits for an answer */
    public Background(Control control) {
        this.control = control;
        this.display = control.getDisplay();
    }

    /**
     * Works something out. To be called on the thread of the window.
     *
     * @param name   of the work, in a few words
     * @param work   done on another thread
     * @param answer takes what came of it, on the thread of the window, unless other work was asked for meanwhile
     */
    public <T> void run(String name, Supplier<T> work, Consumer<T> answer) {
        int mine = latest + 1;
        latest = mine;
        Job job = new Job(name) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                if (mine == latest) {
                    T result = work.get();
                    hand(mine, result, answer);
                }
                return Status.OK_STATUS;
            }
        };
        job.setSystem(true);
        job.setRule(oneAtATime);
        job.schedule();
    }

    private <T> void hand(int mine, T result, Consumer<T> answer) {
        if (!display.isDisposed())
            display.asyncExec(() -> {
                if (mine == latest && !control.isDisposed())
                    answer.accept(result);
            });
    }

    /** A rule that keeps jobs of one view apart, and no others. */
    private static final class Alone implements ISchedulingRule {

        @Override
        public boolean contains(ISchedulingRule rule) {
            return rule == this;
        }

        @Override
        public boolean isConflicting(ISchedulingRule rule) {
            return rule == this;
        }
    }
}
