package mouldwright.workbench.views.surface;

/**
 * Where a solid is seen from: parallel, since a plug is to be judged and not admired.
 *
 * @param turn  round the upright axis, radians; 0 sees the starboard side with the forward end on the right
 * @param tilt  above the level, radians, within a right angle
 * @param scale pixels a metre
 * @param x     where the middle of the solid is shown, pixels from the left
 * @param y     likewise, pixels from the top
 */
public record Camera(double turn, double tilt, double scale, double x, double y) {

    /** From starboard, ahead and above, the whole of it in the middle of a picture. */
    public static Camera fitting(Solid solid, int width, int height) {
        double radius = Math.max(1e-6, new Box(solid).radius());
        return new Camera(Math.toRadians(35), Math.toRadians(25), 0.46 * Math.min(width, height * 1.6) / radius, width / 2.0, height / 2.0);
    }

    /** Turned by a drag of the pointer. @param dx pixels to the right, @param dy pixels down */
    public Camera turned(double dx, double dy) {
        return new Camera(turn + dx / 150, Math.clamp(tilt + dy / 150, -Math.PI / 2, Math.PI / 2), scale, x, y);
    }

    /** Moved across the picture. */
    public Camera moved(double dx, double dy) {
        return new Camera(turn, tilt, scale, x + dx, y + dy);
    }

    /** Nearer by a factor, the place under the pointer staying where it is. */
    public Camera nearer(double factor, double atX, double atY) {
        return new Camera(turn, tilt, scale * factor, atX + (x - atX) * factor, atY + (y - atY) * factor);
    }

    /** For a picture of another size in proportion. */
    public Camera resized(double factor) {
        return new Camera(turn, tilt, scale * factor, x * factor, y * factor);
    }

    /** The rows of the turn: to the right, down, and toward the eye. */
    double[] axes() {
        double c = Math.cos(turn), s = Math.sin(turn), ct = Math.cos(tilt), st = Math.sin(tilt);
        return new double[] {-c, -s, 0, -s * st, c * st, -ct, -s * ct, c * ct, st};
    }
}
