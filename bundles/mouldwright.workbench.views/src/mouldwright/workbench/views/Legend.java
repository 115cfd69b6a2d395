package mouldwright.workbench.views;

import java.util.Locale;
import mouldwright.workbench.views.surface.Ramp;
import mouldwright.workbench.views.surface.Solid;
import mouldwright.workbench.views.surface.SurfaceColouring;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;

/** What the colours of a surface mean. */
record Legend(GC gc, Point size) {

    private static final int WIDTH = 160;
    private static final int HEIGHT = 10;
    private static final int MARGIN = 10;

    /** Drawn at the lower right. */
    void draw(SurfaceColouring colouring, Solid solid) {
        Ramp ramp = colouring.ramp(solid);
        int line = gc.getFontMetrics().getHeight(), left = size.x - WIDTH - MARGIN, top = size.y - HEIGHT - line - MARGIN;
        gc.drawText(colouring.title() + ", " + colouring.unit(), left, top - line - 2, SWT.DRAW_TRANSPARENT);
        for (int i = 0; i < WIDTH; i++) {
            int colour = ramp.colour(ramp.low() + (ramp.high() - ramp.low()) * i / (WIDTH - 1));
            gc.setBackground(new Color(colour >> 16 & 0xff, colour >> 8 & 0xff, colour & 0xff));
            gc.fillRectangle(left + i, top, 1, HEIGHT);
        }
        gc.drawRectangle(left - 1, top - 1, WIDTH + 1, HEIGHT + 1);
        String high = words(ramp.high());
        gc.drawText(words(ramp.low()), left, top + HEIGHT + 2, SWT.DRAW_TRANSPARENT);
        gc.drawText(high, left + WIDTH - gc.textExtent(high).x, top + HEIGHT + 2, SWT.DRAW_TRANSPARENT);
    }

    private static String words(double figure) {
        return String.format(Locale.ROOT, Math.abs(figure) < 10 ? "%.1f" : "%.0f", figure);
    }
}
