package mouldwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Layer;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Spot;
import mouldwright.workbench.views.DrawingView;
import mouldwright.workbench.views.LinesView;
import mouldwright.workbench.views.SectionView;
import mouldwright.workbench.views.SurfaceView;
import mouldwright.workbench.views.paint.DrawingCanvas;
import mouldwright.workbench.views.paint.Glance;
import mouldwright.workbench.views.surface.Solid;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Canvas;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The views round a spec: they show its plan, follow its cursor and lead back to its lines. */
@ExtendWith(NothingLogged.class)
class ViewsTest {

    private final Bench bench = new Bench();

    @TempDir
    private Path folder;

    @AfterEach
    void closeEditors() {
        bench.closeAll();
    }

    private SectionView section() {
        return bench.view("mouldwright.views.section", SectionView.class);
    }

    private static String name(DrawingView view) {
        return view.shown().map(DrawingView.Named::name).orElse("");
    }

    @Test void theSurfaceIsTheSolidOfThePlan() throws Exception {
        SurfaceView view = bench.view("mouldwright.views.surface", SurfaceView.class);
        bench.open(folder, "solid.plug", Bench.BOX);
        bench.until("there is a surface", () -> view.solid().isPresent());
        Solid solid = view.solid().orElseThrow();
        // Extents as the spec has them: 400 mm long, 100 mm to each side, 50 mm high.
        assertEquals(0.4, extent(solid, 0), 1e-6);
        assertEquals(0.2, extent(solid, 1), 1e-6);
        assertEquals(0.05, extent(solid, 2), 1e-6);
        assertTrue(coloured(bench.picture(bench.control(view, Canvas.class))) > 0.05, "something of it is seen");
        bench.photograph("surface");
    }

    private static double extent(Solid solid, int axis) {
        float low = Float.MAX_VALUE, high = -Float.MAX_VALUE;
        for (int i = axis; i < solid.corners().length; i += 3) {
            low = Math.min(low, solid.corners()[i]);
            high = Math.max(high, solid.corners()[i]);
        }
        return high - low;
    }

    /** Share of the pixels that differ from the one in the corner. */
    private static double coloured(ImageData picture) {
        int ground = picture.getPixel(2, 2), other = 0;
        for (int y = 0; y < picture.height; y++)
            for (int x = 0; x < picture.width; x++)
                if (picture.getPixel(x, y) != ground)
                    other++;
        return other / (double) (picture.width * picture.height);
    }

    @Test void theSectionFollowsTheCursor() throws Exception {
        SectionView view = section();
        bench.open(folder, "cursor.plug", Bench.BOX);
        bench.cursorBefore("station B");
        bench.until("B is shown", () -> name(view).equals("section-B"));
        bench.press("Down");
        bench.until("C is shown", () -> name(view).equals("section-C"));
        bench.photograph("section");
    }

    @Test void aClickOnAStationTakesTheCursorToItsLine() throws Exception {
        LinesView view = bench.view("mouldwright.views.lines", LinesView.class);
        bench.open(folder, "click.plug", Bench.BOX);
        bench.until("the lines are shown", () -> view.shown().isPresent());
        DrawingCanvas canvas = bench.control(view, DrawingCanvas.class);
        bench.until("they are painted", () -> canvas.glance().isPresent());
        Spot place = line(view.shown().orElseThrow().drawing(), "station.C");
        Glance glance = canvas.glance().orElseThrow();
        bench.click(canvas, Math.round(glance.across(place)), Math.round(glance.down(place)));
        bench.until("the cursor is in the line of C", () -> bench.line() == 11);
        bench.photograph("lines");
    }

    @Test void aDrawingIsMovedAndZoomedByKeysAndTheTabKeyLeavesIt() throws Exception {
        LinesView view = bench.view("mouldwright.views.lines", LinesView.class);
        bench.open(folder, "keys.plug", Bench.BOX);
        bench.until("the lines are shown", () -> view.shown().isPresent());
        DrawingCanvas canvas = bench.control(view, DrawingCanvas.class);
        bench.view("mouldwright.views.lines", LinesView.class);
        bench.until("the keyboard is in the drawing", canvas::isFocusControl);
        Glance before = canvas.glance().orElseThrow();
        bench.press("Right");
        bench.until("it has moved to the left", () -> canvas.glance().orElseThrow().x() < before.x());
        bench.press("plus");
        bench.until("it is nearer", () -> canvas.glance().orElseThrow().scale() > before.scale());
        bench.press("Home");
        bench.until("all of it is shown", () -> canvas.glance().orElseThrow().equals(before));
        bench.press("Tab");
        bench.until("the keyboard has left", () -> !canvas.isFocusControl());
    }

    /** The middle of the first line drawn of something. */
    private static Spot line(Drawing drawing, String about) {
        for (Layer layer : drawing.layers())
            for (Layer.Item item : layer.items())
                if (item.about().equals(about) && item.mark() instanceof Mark.Line line)
                    return line.path().start().toward(line.path().strokes().getFirst().end(), 0.37);
        throw new IllegalStateException("nothing drawn of " + about);
    }

    @Test void aBrokenSpecKeepsTheLastGoodDrawingPaled() throws Exception {
        SectionView view = section();
        bench.open(folder, "broken.plug", Bench.BOX);
        bench.cursorBefore("station B");
        bench.until("B is shown", () -> name(view).equals("section-B"));
        DrawingCanvas canvas = bench.control(view, DrawingCanvas.class);
        Optional<DrawingView.Named> good = view.shown();
        bench.type("}");
        bench.until("it is paled", canvas::isVeiled);
        assertEquals(good, view.shown());
        bench.photograph("broken");
        bench.press("BackSpace");
        bench.until("it is clear again", () -> !canvas.isVeiled());
    }

    @Test void withoutASpecAViewSaysWhatToDo() throws Exception {
        SectionView view = section();
        bench.open(folder, "closed.plug", Bench.BOX);
        bench.until("a section is shown", () -> view.shown().isPresent());
        bench.closeAll();
        bench.until("none is shown", () -> view.shown().isEmpty());
        assertTrue(coloured(bench.picture(bench.control(view, DrawingCanvas.class))) > 0.001, "there are words");
    }
}
