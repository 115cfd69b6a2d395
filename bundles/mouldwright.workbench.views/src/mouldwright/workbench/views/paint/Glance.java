package mouldwright.workbench.views.paint;

import mouldwright.drawing.Extent;
import mouldwright.drawing.Spot;

/**
 * Which part of a drawing is looked at, and how large.
 *
 * @param scale pixels a millimetre of the drawing's paper
 * @param x     where the paper's zero is shown, pixels from the left
 * @param y     likewise, pixels from the top
 */
public record Glance(double scale, double x, double y) {

    private static final double LEAST = 1e-3;
    private static final double MOST = 1e3;

    /** All of a drawing in the middle of a picture. @param width pixels @param height pixels */
    public static Glance fitting(Extent paper, int width, int height) {
        double scale = Math.clamp(Math.min(width / Math.max(1e-6, paper.width()), height / Math.max(1e-6, paper.height())), LEAST, MOST);
        return new Glance(scale, width / 2.0 - scale * (paper.left() + paper.right()) / 2, height / 2.0 + scale * (paper.bottom() + paper.top()) / 2);
    }

    /** Moved across the picture. @param dx pixels @param dy pixels */
    public Glance moved(double dx, double dy) {
        return new Glance(scale, x + dx, y + dy);
    }

    /** Nearer by a factor, the place under the pointer staying where it is. */
    public Glance nearer(double factor, double atX, double atY) {
        double next = Math.clamp(scale * factor, LEAST, MOST), real = next / scale;
        return new Glance(next, atX + (x - atX) * real, atY + (y - atY) * real);
    }

    /** Where a place of the drawing is shown, pixels from the left. */
    public float across(Spot spot) {
        return (float) (x + scale * spot.x());
    }

    /** Likewise, pixels from the top. */
    public float down(Spot spot) {
        return (float) (y - scale * spot.y());
    }

    /** The place of the drawing that is shown somewhere. */
    public Spot spot(double atX, double atY) {
        return new Spot((atX - x) / scale, (y - atY) / scale);
    }
}
