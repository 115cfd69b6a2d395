package mouldwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.jface.resource.ColorRegistry;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.graphics.Color;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What happens while a spec is typed. */
@ExtendWith(NothingLogged.class)
class EditingTest {

    private static final List<String> ENGINE = List.of("mouldwright.geometry.", "mouldwright.process.", "mouldwright.language.", "mouldwright.plan.stage.", "mouldwright.plan.read.",
            "mouldwright.check.", "mouldwright.drawing.subject.", "org.eclipse.xtext.");

    private final Bench bench = new Bench();

    @TempDir
    private Path folder;

    @AfterEach
    void closeEditors() {
        bench.closeAll();
    }

    private Color colour(String name) {
        ColorRegistry colours = PlatformUI.getWorkbench().getThemeManager().getCurrentTheme().getColorRegistry();
        return colours.get("mouldwright.colour." + name);
    }

    private StyleRange style(String words) {
        return bench.inWindow(() -> bench.widget().getStyleRangeAtOffset(bench.widget().getText().indexOf(words)));
    }

    @Test void wordsOfTheLanguageAreBoldAndFiguresAndTextsHaveTheirColours() throws Exception {
        bench.open(folder, "colours.plug", Bench.BOX);
        bench.until("the text is coloured", () -> style("station A") != null);
        assertEquals(SWT.BOLD, style("station A").fontStyle);
        assertEquals(bench.inWindow(() -> colour("word")), style("station A").foreground);
        assertEquals(bench.inWindow(() -> colour("figure")), style("400 like").foreground);
        assertEquals(bench.inWindow(() -> colour("text")), style("\"A box\"").foreground);
    }

    @Test void aFindingAppearsAtItsLineWhileItIsTypedAndGoesWhenItIsMended() throws Exception {
        Path file = bench.open(folder, "typed.plug", Bench.BOX);
        List<String> before = bench.findings(file);
        bench.cursorBefore("like A\n    station C");
        bench.type("z");
        bench.until("the letter is in the text", () -> bench.text().contains("200 zlike A"));
        bench.until("there is a finding in line 10", () -> bench.findings(file).stream().anyMatch(one -> one.endsWith(" at 10")));
        bench.press("BackSpace");
        bench.until("the text is as before", () -> bench.text().equals(Bench.BOX));
        bench.until("it is gone", () -> bench.findings(file).equals(before));
    }

    @Test void whatIsFoundInASpecGoesWithItsEditor() throws Exception {
        Path file = bench.open(folder, "gone.plug", Bench.BOX.replace("200 like A", "200 like Q"));
        bench.until("there is a finding", () -> !bench.findings(file).isEmpty());
        bench.closeAll();
        bench.until("there is none", () -> bench.findings(file).isEmpty());
    }

    /** The thread of the window is looked at again and again while somebody types; where a class of the engine has a call of its own on it, it is named. */
    @Test void nothingOfTheEngineRunsOnTheThreadOfTheWindow() throws Exception {
        bench.open(folder, "quick.plug", Bench.BOX);
        bench.cursorBefore("\n    half");
        Thread window = bench.inWindow(Thread::currentThread);
        Set<String> met = new TreeSet<>();
        AtomicBoolean typing = new AtomicBoolean(true);
        Thread watch = Thread.ofPlatform().start(() -> {
            while (typing.get())
                for (StackTraceElement call : window.getStackTrace())
                    if (ENGINE.stream().anyMatch(call.getClassName()::startsWith))
                        met.add(call.getClassName() + "." + call.getMethodName());
        });
        for (int i = 0; i < 20; i++)
            if (i % 2 == 0)
                bench.type(" ");
            else
                bench.press("BackSpace");
        typing.set(false);
        watch.join();
        assertEquals(Set.of(), met);
        bench.until("all is rubbed out again", () -> bench.text().equals(Bench.BOX));
    }
}
