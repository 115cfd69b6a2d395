package mouldwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import mouldwright.workbench.editor.LiveSpecs;
import mouldwright.workbench.editor.SpecFolders;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.texteditor.ITextEditor;

/** The workbench under trial: opens specs, types, points, and waits for what comes of it. Called from a test's own thread. */
final class Bench {

    /** A box of three stations, with a frame. */
    static final String BOX = """
            plug Box "A box" {
                units mm
                half sections
                station A at 0 {
                    0 0
                    100 0 knuckle
                    100 50 knuckle
                    0 50
                }
                station B at 200 like A
                station C at 400 like A
            }
            """;

    /** Long enough for the slowest machine; what has not come by then will not. */
    private static final int PATIENCE = 60_000;
    private static final int LOOK_AGAIN = 20;

    private final Display display = PlatformUI.getWorkbench().getDisplay();

    /** Does something on the thread of the window. */
    <T> T inWindow(Callable<T> work) {
        AtomicReference<T> result = new AtomicReference<>();
        AtomicReference<Exception> fault = new AtomicReference<>();
        display.syncExec(() -> {
            try {
                result.set(work.call());
            } catch (Exception e) {
                fault.set(e);
            }
        });
        if (fault.get() != null)
            throw new IllegalStateException(fault.get());
        return result.get();
    }

    /** Waits until something is so, as seen on the thread of the window. */
    void until(String what, BooleanSupplier holds) {
        for (int waited = 0; waited < PATIENCE; waited += LOOK_AGAIN) {
            if (inWindow(holds::getAsBoolean))
                return;
            pause();
        }
        fail("waited in vain until " + what + "; in front is:\n" + editor().map(one -> text()).orElse("nothing"));
    }

    private static void pause() {
        try {
            Thread.sleep(LOOK_AGAIN);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0];
    }

    private IWorkbenchPage page() {
        return window().getActivePage();
    }

    /** Opens a spec and waits for its first plan. */
    Path open(Path folder, String name, String text) throws Exception {
        Path file = Files.writeString(folder.toRealPath().resolve(name), text);
        new SpecFolders().open(List.of(file));
        until(name + " is in front", () -> editor().isPresent() && editor().get().getEditorInput().getName().equals(name));
        until(name + " is planned", () -> LiveSpecs.all().known(file).filter(LiveSpecs.Known::complete).isPresent());
        return file;
    }

    /** Closes all editors; nothing is saved. */
    void closeAll() {
        inWindow(() -> page().closeAllEditors(false));
    }

    Optional<ITextEditor> editor() {
        IEditorPart part = page().getActiveEditor();
        return part instanceof ITextEditor editor ? Optional.of(editor) : Optional.empty();
    }

    /** The text in front. */
    String text() {
        return inWindow(() -> widget().getText());
    }

    StyledText widget() {
        return (StyledText) editor().orElseThrow().getAdapter(Control.class);
    }

    /** The line of the cursor, from 1. */
    int line() {
        return inWindow(() -> widget().getLineAtOffset(widget().getCaretOffset()) + 1);
    }

    /** Puts the cursor before the first place of some words, with the keyboard in the text. */
    void cursorBefore(String words) {
        inWindow(() -> {
            int at = widget().getText().indexOf(words);
            if (at < 0)
                throw new IllegalStateException("no " + words);
            page().activate(editor().orElseThrow());
            editor().get().selectAndReveal(at, 0);
            return at;
        });
        until("the keyboard is in the text", () -> {
            window().getShell().forceActive();
            return widget().isFocusControl();
        });
    }

    /** Types letters. */
    void type(String letters) {
        hands("type", "--delay", "5", letters);
    }

    /** Presses a key by its name in the X keyboard protocol, such as {@code BackSpace} or {@code ctrl+s}. */
    void press(String key) {
        hands("key", key);
    }

    /** Uses the keyboard and the pointer of the system, as hands do. */
    private void hands(String... what) {
        List<String> command = new ArrayList<>(List.of("xdotool"));
        command.addAll(List.of(what));
        try {
            assertEquals(0, new ProcessBuilder(command).inheritIO().start().waitFor(), String.join(" ", command));
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
        settle();
    }

    /** Lets the window work off what has come in. */
    void settle() {
        inWindow(() -> {
            while (display.readAndDispatch()) {
                // until nothing is left
            }
            return true;
        });
    }

    /** Clicks in a control with the pointer of the system. */
    void click(Control control, int x, int y) {
        Point place = inWindow(() -> control.toDisplay(x, y));
        hands("mousemove", Integer.toString(place.x), Integer.toString(place.y), "click", "1");
    }

    /** Codes and lines of the findings marked in a spec, such as {@code MW101 at 4}. */
    List<String> findings(Path file) {
        try {
            return Stream.of(ResourcesPlugin.getWorkspace().getRoot().findFilesForLocationURI(file.toUri())).flatMap(resource -> markers(resource).stream()).distinct().toList();
        } catch (IllegalStateException e) {
            return List.of();
        }
    }

    private static List<String> markers(IResource resource) {
        try {
            return Arrays.stream(resource.findMarkers("mouldwright.workbench.editor.finding", true, IResource.DEPTH_ZERO))
                    .map(marker -> marker.getAttribute("code", "") + " at " + marker.getAttribute(IMarker.LINE_NUMBER, 0)).sorted().toList();
        } catch (org.eclipse.core.runtime.CoreException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Brings a view to the front. */
    <T extends IViewPart> T view(String id, Class<T> type) {
        return type.cast(inWindow(() -> page().showView(id, null, IWorkbenchPage.VIEW_ACTIVATE)));
    }

    /** The first control of a kind in a view. */
    <T extends Control> T control(IViewPart view, Class<T> type) {
        return inWindow(() -> find(view.getSite().getShell(), view, type).orElseThrow());
    }

    private <T extends Control> Optional<T> find(Composite parent, IViewPart view, Class<T> type) {
        for (Control child : parent.getChildren()) {
            if (type.isInstance(child) && child.isVisible())
                return Optional.of(type.cast(child));
            if (child instanceof Composite inner) {
                Optional<T> found = find(inner, view, type);
                if (found.isPresent())
                    return found;
            }
        }
        return Optional.empty();
    }

    /** What a control looks like. */
    ImageData picture(Control control) {
        return inWindow(() -> {
            Point size = control.getSize();
            Image image = new Image(display, size.x, size.y);
            GC gc = new GC(image);
            control.print(gc);
            gc.dispose();
            ImageData data = image.getImageData(100);
            image.dispose();
            return data;
        });
    }

    /** Keeps a picture of the whole window, to be looked at: target/pictures/NAME.png. */
    void photograph(String name) throws Exception {
        settle();
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {picture(window().getShell())};
        Path folder = Files.createDirectories(Path.of(System.getProperty("mouldwright.pictures")));
        loader.save(folder.resolve(name + ".png").toString(), SWT.IMAGE_PNG);
    }
}
