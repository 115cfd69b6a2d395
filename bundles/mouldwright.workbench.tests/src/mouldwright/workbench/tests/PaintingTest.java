package mouldwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Consumer;
import mouldwright.drawing.Draughtsman;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Palette;
import mouldwright.drawing.Path;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.drawing.Tone;
import mouldwright.workbench.views.paint.DrawingPainter;
import mouldwright.workbench.views.paint.Glance;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What is painted is what is drawn, pixel by pixel. The areas and lengths compared with are those of plane geometry. */
@ExtendWith(NothingLogged.class)
class PaintingTest {

    private static final Extent PAPER = new Extent(0, 0, 200, 100);
    private static final Mark.Fill INK = new Mark.Fill.Coloured(0);

    private final Bench bench = new Bench();

    private ImageData painted(Consumer<Draughtsman> drawn, int pixelsAMillimetre) {
        Draughtsman draughtsman = new Draughtsman();
        drawn.accept(draughtsman);
        Drawing drawing = draughtsman.finish("Test", "a test", PAPER);
        return bench.inWindow(() -> {
            int width = 200 * pixelsAMillimetre, height = 100 * pixelsAMillimetre;
            Image image = new Image(Display.getCurrent(), width, height);
            GC gc = new GC(image);
            try (DrawingPainter painter = new DrawingPainter(gc, Glance.fitting(PAPER, width, height), Palette.PAPER, "")) {
                painter.paint(drawing);
            }
            gc.dispose();
            ImageData data = image.getImageData(100);
            image.dispose();
            return data;
        });
    }

    private static double darkness(ImageData picture, int x, int y) {
        return 1 - picture.palette.getRGB(picture.getPixel(x, y)).red / 255.0;
    }

    private static double inked(ImageData picture) {
        double sum = 0;
        for (int y = 0; y < picture.height; y++)
            for (int x = 0; x < picture.width; x++)
                sum += darkness(picture, x, y);
        return sum;
    }

    private static Path box(double left, double bottom, double right, double top) {
        return Path.box(new Extent(left, bottom, right, top));
    }

    @Test void anAreaWithAHoleCoversWhatItMeasures() {
        ImageData picture = painted(to -> to.draw(Role.AREA, new Mark.Area(List.of(box(20, 20, 120, 80), box(40, 40, 60, 60)), INK)), 2);
        assertEquals((100 * 60 - 20 * 20) * 4, inked(picture), 1);
    }

    @Test void aDiscCoversPiRSquared() {
        ImageData picture = painted(to -> to.draw(Role.AREA, new Mark.Area(List.of(Path.circle(new Spot(100, 50), 40)), INK)), 2);
        assertEquals(Math.PI * 80 * 80, inked(picture), 0.003 * Math.PI * 80 * 80);
    }

    @Test void upOnThePaperIsUpOnTheScreen() {
        ImageData picture = painted(to -> to.draw(Role.AREA, new Mark.Area(List.of(box(0, 50, 200, 100)), INK)), 1);
        assertEquals(1, darkness(picture, 100, 10), 0.01);
        assertEquals(0, darkness(picture, 100, 90), 0.01);
    }

    @Test void wordsAreAsWideAsTheyWereMeasured() {
        Mark.Words words = new Mark.Words("HHHHHHHHHH", new Spot(20, 40), 10, Mark.Anchor.START, 0, Tone.INK);
        int[] box = inkBox(painted(to -> to.draw(Role.TEXT, words), 2));
        assertEquals(40, box[0], 6, "they begin at their place, but for the room left of the first letter");
        assertEquals(2 * words.width(), box[2] - box[0], 8);
        assertEquals(2 * 10, box[3] - box[1] + 1, 2, "a capital is as high as asked for");
        assertEquals(2 * (100 - 40), box[3] + 1, 2, "they stand on their foot");
    }

    @Test void longWordsAreNotCutShort() {
        Mark.Words words = new Mark.Words("scale 1 : 4; from the side, from above, and its stations from aft H", new Spot(10, 40), 2.5, Mark.Anchor.START, 0, Tone.INK);
        int[] box = inkBox(painted(to -> to.draw(Role.TEXT, words), 4));
        assertEquals(4 * words.width(), box[2] - box[0], 8);
    }

    @Test void wordsTurnCounterClockwise() {
        int[] box = inkBox(painted(to -> to.draw(Role.TEXT, new Mark.Words("HHHHHH", new Spot(100, 20), 5, Mark.Anchor.START, 90, Tone.INK)), 2));
        assertTrue(box[3] - box[1] > 3 * (box[2] - box[0]), "they stand upright");
        assertTrue(box[3] <= 2 * 80 + 2 && box[2] <= 200 + 2, "and go up from their place, to its left");
    }

    /** Left, top, right and bottom of what is dark, pixels. */
    private static int[] inkBox(ImageData picture) {
        int[] box = {Integer.MAX_VALUE, Integer.MAX_VALUE, -1, -1};
        for (int y = 0; y < picture.height; y++)
            for (int x = 0; x < picture.width; x++)
                if (darkness(picture, x, y) > 0.3) {
                    box[0] = Math.min(box[0], x);
                    box[1] = Math.min(box[1], y);
                    box[2] = Math.max(box[2], x);
                    box[3] = Math.max(box[3], y);
                }
        return box;
    }
}
