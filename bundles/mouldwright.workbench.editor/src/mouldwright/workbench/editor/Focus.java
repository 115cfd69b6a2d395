package mouldwright.workbench.editor;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Origin;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.INullSelectionListener;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.texteditor.ITextEditor;

/** Follows the cursor and the plan of the spec in front, for the views of one window. Used on the thread of the window only. */
public final class Focus implements INullSelectionListener, LiveSpecs.Listener {

    private static final Map<IWorkbenchWindow, Focus> ALL = new HashMap<>();

    private final IWorkbenchWindow window;
    private final CopyOnWriteArrayList<Consumer<Shown>> listeners = new CopyOnWriteArrayList<>();
    private Optional<Path> file = Optional.empty();
    private int line = 1;

    private Focus(IWorkbenchWindow window) {
        this.window = window;
        window.getSelectionService().addPostSelectionListener(this);
        window.getPartService().addPartListener(new EditorsClosing(this::editorClosed));
        window.getShell().addListener(org.eclipse.swt.SWT.Dispose, event -> {
            ALL.remove(window);
            LiveSpecs.all().forget(this);
        });
        LiveSpecs.all().listen(this);
    }

    /** That of a window. */
    public static Focus of(IWorkbenchWindow window) {
        Focus known = ALL.get(window);
        if (known == null) {
            known = new Focus(window);
            ALL.put(window, known);
        }
        return known;
    }

    /** Tells a view what to show, now and whenever it changes. */
    public void follow(Consumer<Shown> view) {
        listeners.add(view);
        editor().ifPresent(this::look);
        view.accept(shown());
    }

    /** Leaves a view alone. */
    public void leave(Consumer<Shown> view) {
        listeners.remove(view);
    }

    /** Takes the cursor to what made something. @param key as drawings give it to their marks
     *  @return whether the text has a line for it */
    public boolean show(String key) {
        Optional<LiveSpecs.Known> known = known();
        OptionalInt found = known.flatMap(this::plan).map(plan -> known.get().places().get(plan.plug()).line(key)).orElse(OptionalInt.empty());
        found.ifPresent(this::show);
        return found.isPresent();
    }

    /** Takes the cursor to a line of the spec in front. @param toLine from 1; past the end, the last */
    public void show(int toLine) {
        editor().ifPresent(editor -> {
            IDocument document = document(editor);
            try {
                editor.selectAndReveal(document.getLineOffset(Math.max(1, Math.min(toLine, document.getNumberOfLines())) - 1), 0);
            } catch (BadLocationException e) {
                // The text has become shorter meanwhile: there is nothing to show.
            }
        });
    }

    private Optional<ITextEditor> editor() {
        IWorkbenchPage page = window.getActivePage();
        return page != null && page.getActiveEditor() instanceof ITextEditor editor ? Optional.of(editor) : Optional.empty();
    }

    private static IDocument document(ITextEditor editor) {
        return editor.getDocumentProvider().getDocument(editor.getEditorInput());
    }

    private void look(ITextEditor editor) {
        ISelection selection = editor.getSelectionProvider() == null ? null : editor.getSelectionProvider().getSelection();
        ITextFileBuffer buffer = FileBuffers.getTextFileBufferManager().getTextFileBuffer(document(editor));
        file = buffer == null ? Optional.empty() : DocumentTracker.file(buffer);
        if (selection instanceof ITextSelection text)
            line = text.getStartLine() + 1;
    }

    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        if (part instanceof ITextEditor editor) {
            look(editor);
            tell();
        }
    }

    private void editorClosed() {
        file = Optional.empty();
        editor().ifPresent(this::look);
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
        Shown shown = shown();
        listeners.forEach(listener -> listener.accept(shown));
    }

    private Shown shown() {
        Optional<LiveSpecs.Known> known = known();
        Optional<BuildPlan> plan = known.flatMap(this::plan);
        String code = plan.map(one -> one.plug() + " " + known.get().revision()).orElse("");
        String about = plan.map(one -> known.get().places().get(one.plug()).key(line)).orElse("");
        return file.isEmpty() ? Shown.NOTHING : new Shown(file, plan, code, known.map(LiveSpecs.Known::state).orElse(Shown.State.BEHIND), line, about);
    }

    private Optional<LiveSpecs.Known> known() {
        return file.flatMap(LiveSpecs.all()::known);
    }

    /** Of several plugs in a file, the last that begins above the cursor. */
    private Optional<BuildPlan> plan(LiveSpecs.Known known) {
        return known.plans().values().stream().filter(plan -> line(plan) <= line).reduce((a, b) -> b)
                .or(() -> known.plans().values().stream().findFirst());
    }

    private static int line(BuildPlan plan) {
        return plan.spec().origin() instanceof Origin.Text text ? text.line() : 1;
    }
}
