package mouldwright.workbench.views.paint;

import java.io.IOException;
import java.net.URL;
import mouldwright.drawing.Lettering;
import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Transform;

/** The letters that drawings are measured with, as outlines, so that words keep their place and size whatever the zoom. */
final class Letters implements AutoCloseable {

    private static final int POINTS = 72;

    private static final int RUN = 8;

    private static boolean loaded;

    private final Device device;
    private final Font font;
    private final float ascent;
    private final float pixelsACapital;

    /** @param gc of the device they are painted on */
    Letters(GC gc) {
        device = gc.getDevice();
        load(device);
        font = new Font(device, "DejaVu Sans", POINTS, SWT.NORMAL);
        Font before = gc.getFont();
        gc.setFont(font);
        ascent = gc.getFontMetrics().getAscent() + gc.getFontMetrics().getLeading();
        gc.setFont(before);
        pixelsACapital = (float) (POINTS * device.getDPI().y / 72.0 * Lettering.CAPITAL);
    }

    /** Once is enough for all devices of a process. */
    private static void load(Device device) {
        if (loaded)
            return;
        loaded = true;
        URL place = Lettering.class.getResource("/fonts/DejaVuSans.ttf");
        try {
            if (place == null || !device.loadFont(FileLocator.toFileURL(place).getPath()))
                ILog.get().warn("The font of drawings could not be loaded: words may stand a little off");
        } catch (IOException e) {
            ILog.get().warn("The font of drawings could not be read: words may stand a little off", e);
        }
    }

    /** Fills some words, in short runs: SWT leaves out of an outline what lies more than ten ems from its beginning.
     *  @param place where the words begin, on the foot of the letters, at the scale of {@link #scale}; it is moved on */
    void fill(GC gc, Transform place, String words) {
        int[] letters = words.codePoints().toArray();
        for (int from = 0; from < letters.length; from += RUN) {
            String run = new String(letters, from, Math.min(RUN, letters.length - from));
            gc.setTransform(place);
            Path path = new Path(device);
            path.addString(run, 0, -ascent, font);
            gc.fillPath(path);
            path.dispose();
            place.translate((float) Lettering.width(run, pixelsACapital), 0);
        }
    }

    /** How much outlines are to be enlarged. @param capital height of a capital letter, pixels */
    float scale(double capital) {
        return (float) (capital / pixelsACapital);
    }

    @Override
    public void close() {
        font.dispose();
    }
}
