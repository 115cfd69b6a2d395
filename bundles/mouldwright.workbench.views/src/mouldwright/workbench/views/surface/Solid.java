package mouldwright.workbench.views.surface;

/**
 * A surface as triangles, with a figure at each corner that decides its colour.
 *
 * @param corners   x aft, y to starboard and z up of each corner, metres, one after the other
 * @param normals   outward unit vectors, likewise
 * @param figures   what is shown, one a corner; NaN where there is nothing to show
 * @param triangles three corners each, counter-clockwise seen from outside
 * @param lines     pairs of corners joined by a line, such as the stations'
 */
public record Solid(float[] corners, float[] normals, float[] figures, int[] triangles, int[] lines) {

    /** How many corners there are. */
    public int size() {
        return figures.length;
    }
}
