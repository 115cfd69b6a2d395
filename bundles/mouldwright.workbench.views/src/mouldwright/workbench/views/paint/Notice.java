package mouldwright.workbench.views.paint;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;

/** Words in a drawing: why there is nothing, or why it is pale. */
public record Notice(GC gc, Point size) {

    /** Words in the middle. */
    public void say(String words) {
        Point extent = gc.textExtent(words, SWT.DRAW_TRANSPARENT);
        gc.drawText(words, Math.max(8, (size.x - extent.x) / 2), (size.y - extent.y) / 2, SWT.DRAW_TRANSPARENT);
    }

    /** A pale sheet over what is drawn, with words at the foot. */
    public void veil(Color ground, String words) {
        gc.setBackground(ground);
        gc.setAlpha(150);
        gc.fillRectangle(0, 0, size.x, size.y);
        gc.setAlpha(255);
        Point extent = gc.textExtent(words, SWT.DRAW_TRANSPARENT);
        gc.drawText(words, 8, size.y - extent.y - 8, SWT.DRAW_TRANSPARENT);
    }
}
