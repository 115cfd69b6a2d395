package mouldwright.workbench.editor;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import mouldwright.plan.BuildPlan;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.INullSelectionListener;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.texteditor.ITextEditor;

/** Follows the cursor and the plan of the spec in front, for the views of one window. Used on the thread of the window only. */
public final class Focus implements INullSelectionListener, LiveSpecs.Listener {

    private static final Map<IWorkbenchWindow, Focus> ALL = new java.util.WeakHashMap<>();

    private final IWorkbenchWindow window;
    private final CopyOnWriteArrayList<Consumer<Shown>> listeners = new CopyOnWriteArrayList<>();
    private Optional<Path> file = Optional.empty();
    private int line = 1;

    private Focus(IWorkbenchWindow window) {
        this.window = window;
        window.getSelectionService().addPostSelectionListener(this);
        LiveSpecs.all().listen(this);
    }

    /** That of a window. */
    public static Focus of(IWorkbenchWindow window) {
        return ALL.computeIfAbsent(window, Focus::new);
    }

    /** Tells a view what to show, now and whenever it changes. */
    public void follow(Consumer<Shown> view) {
        listeners.add(view);
        IWorkbenchPage page = window.getActivePage();
        if (page != null && page.getActiveEditor() instanceof ITextEditor editor)
            selectionChanged(editor, editor.getSelectionProvider() == null ? null : editor.getSelectionProvider().getSelection());
        shown().ifPresent(view);
    }

    /** Leaves a view alone. */
    public void leave(Consumer<Shown> view) {
        listeners.remove(view);
    }

    /** Takes the cursor to a line of the spec in front. @param toLine from 1 */
    public void show(int toLine) {
        IWorkbenchPage page = window.getActivePage();
        IEditorPart part = page == null ? null : page.getActiveEditor();
        if (!(part instanceof ITextEditor editor))
            return;
        IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
        try {
            editor.selectAndReveal(document.getLineOffset(Math.min(toLine, document.getNumberOfLines()) - 1), 0);
        } catch (org.eclipse.jface.text.BadLocationException e) {
            // The text has become shorter meanwhile: there is nothing to show.
        }
    }

    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        if (!(part instanceof ITextEditor editor))
            return;
        IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
        ITextFileBuffer buffer = FileBuffers.getTextFileBufferManager().getTextFileBuffer(document);
        file = buffer == null ? Optional.empty() : DocumentTracker.file(buffer);
        if (selection instanceof ITextSelection text)
            line = text.getStartLine() + 1;
        tell();
    }

    @Override
    public void found(Path found, LiveSpecs.Known known) {
        Display display = window.getWorkbench().getDisplay();
        if (!display.isDisposed())
            display.asyncExec(() -> {
                if (file.filter(found::equals).isPresent())
                    tell();
            });
    }

    private void tell() {
        shown().ifPresent(one -> listeners.forEach(listener -> listener.accept(one)));
    }

    private Optional<Shown> shown() {
        return file.flatMap(path -> LiveSpecs.all().known(path).map(known -> new Shown(path, plan(known), known.stale(), line)));
    }

    /** Of several plugs in a file, the last that begins above the cursor. */
    private Optional<BuildPlan> plan(LiveSpecs.Known known) {
        return known.plans().values().stream().filter(plan -> line(plan) <= line).reduce((a, b) -> b)
                .or(() -> known.plans().values().stream().findFirst());
    }

    private static int line(BuildPlan plan) {
        return plan.spec().origin() instanceof mouldwright.plan.spec.Origin.Text text ? text.line() : 1;
    }
}
