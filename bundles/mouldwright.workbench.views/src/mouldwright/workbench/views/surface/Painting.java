package mouldwright.workbench.views.surface;

import java.util.Arrays;

/** Fills a picture with a solid, each pixel by what lies nearest to the eye. One painting may be filled again and again. */
public final class Painting {

    private static final float LINE_LIFT = 0.004f;
    private static final int COLOURS = 512;

    private final int width;
    private final int height;
    private final int[] pixels;
    private final float[] nearness;
    private float[] seen = new float[0];
    private float[] light = new float[0];

    /** An empty picture. */
    public Painting(int width, int height) {
        this.width = width;
        this.height = height;
        pixels = new int[width * height];
        nearness = new float[width * height];
    }

    /** Pixels from left to right and top to bottom, red, green and blue by bytes. */
    public int[] pixels() {
        return pixels;
    }

    /** Pixels across. */
    public int width() {
        return width;
    }

    /** Pixels down. */
    public int height() {
        return height;
    }

    /**
     * Fills it.
     *
     * @param ground colour where there is nothing
     * @param ink    colour of lines
     */
    public void fill(Solid solid, Camera camera, Ramp ramp, int ground, int ink) {
        Arrays.fill(pixels, ground);
        Arrays.fill(nearness, -Float.MAX_VALUE);
        see(solid, camera);
        int[] t = solid.triangles(), colours = ramp.table(COLOURS);
        float[] shares = shares(solid.figures(), ramp);
        for (int i = 0; i < t.length; i += 3)
            triangle(shares, colours, t[i], t[i + 1], t[i + 2]);
        int[] lines = solid.lines();
        for (int i = 0; i < lines.length; i += 2)
            line(lines[i], lines[i + 1], ink);
    }

    /** Where each figure stands in the table of colours. */
    private static float[] shares(float[] figures, Ramp ramp) {
        float[] shares = new float[figures.length];
        double span = ramp.high() > ramp.low() ? ramp.high() - ramp.low() : 1;
        for (int i = 0; i < figures.length; i++)
            shares[i] = (float) (Math.clamp((figures[i] - ramp.low()) / span, 0, 1) * (COLOURS - 1));
        return shares;
    }

    /** The corner whose place in the picture is nearest to a point and in front there; -1 for none. */
    public int cornerAt(Solid solid, double x, double y) {
        int column = (int) x, row = (int) y, best = -1;
        if (column < 0 || row < 0 || column >= width || row >= height || nearness[row * width + column] == -Float.MAX_VALUE)
            return -1;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < solid.size(); i++) {
            double off = Math.hypot(seen[3 * i] - x, seen[3 * i + 1] - y) + Math.abs(seen[3 * i + 2] - nearness[row * width + column]);
            if (off < least) {
                least = off;
                best = i;
            }
        }
        return best;
    }

    private void see(Solid solid, Camera camera) {
        int n = solid.size();
        if (light.length < n) {
            seen = new float[3 * n];
            light = new float[n];
        }
        Box box = new Box(solid);
        double[] a = camera.axes();
        double mx = box.middle(0), my = box.middle(1), mz = box.middle(2), scale = camera.scale();
        float[] c = solid.corners(), w = solid.normals();
        for (int i = 0; i < n; i++) {
            double x = c[3 * i] - mx, y = c[3 * i + 1] - my, z = c[3 * i + 2] - mz;
            seen[3 * i] = (float) (camera.x() + scale * (a[0] * x + a[1] * y + a[2] * z));
            seen[3 * i + 1] = (float) (camera.y() + scale * (a[3] * x + a[4] * y + a[5] * z));
            seen[3 * i + 2] = (float) (scale * (a[6] * x + a[7] * y + a[8] * z));
            double facing = a[6] * w[3 * i] + a[7] * w[3 * i + 1] + a[8] * w[3 * i + 2];
            double above = Math.max(0, w[3 * i + 2]);
            light[i] = (float) Math.min(1, 0.42 + 0.48 * Math.abs(facing) + 0.12 * above);
        }
    }

    private void triangle(float[] shares, int[] colours, int a, int b, int c) {
        float ax = seen[3 * a], ay = seen[3 * a + 1], bx = seen[3 * b], by = seen[3 * b + 1], cx = seen[3 * c], cy = seen[3 * c + 1];
        float area = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
        if (area == 0)
            return;
        int left = Math.max(0, (int) Math.ceil(Math.min(ax, Math.min(bx, cx)) - 0.5f)), right = Math.min(width - 1, (int) Math.floor(Math.max(ax, Math.max(bx, cx)) - 0.5f));
        int top = Math.max(0, (int) Math.ceil(Math.min(ay, Math.min(by, cy)) - 0.5f)), bottom = Math.min(height - 1, (int) Math.floor(Math.max(ay, Math.max(by, cy)) - 0.5f));
        if (left > right || top > bottom)
            return;
        float inverse = 1 / area;
        for (int row = top; row <= bottom; row++) {
            float py = row + 0.5f;
            for (int column = left; column <= right; column++) {
                float px = column + 0.5f;
                float u = ((bx - px) * (cy - py) - (cx - px) * (by - py)) * inverse, v = ((cx - px) * (ay - py) - (ax - px) * (cy - py)) * inverse, w = 1 - u - v;
                if (u < -1e-5f || v < -1e-5f || w < -1e-5f)
                    continue;
                float near = u * seen[3 * a + 2] + v * seen[3 * b + 2] + w * seen[3 * c + 2];
                int at = row * width + column;
                if (near <= nearness[at])
                    continue;
                nearness[at] = near;
                float share = u * shares[a] + v * shares[b] + w * shares[c];
                int colour = share == share ? colours[Math.min(COLOURS - 1, Math.max(0, (int) share))] : Ramp.NOTHING;
                pixels[at] = shaded(colour, u * light[a] + v * light[b] + w * light[c]);
            }
        }
    }

    private void line(int a, int b, int ink) {
        float dx = seen[3 * b] - seen[3 * a], dy = seen[3 * b + 1] - seen[3 * a + 1], dz = seen[3 * b + 2] - seen[3 * a + 2];
        int steps = Math.max(1, (int) Math.ceil(Math.max(Math.abs(dx), Math.abs(dy))));
        float lift = LINE_LIFT * Math.max(width, height);
        for (int i = 0; i <= steps; i++) {
            float share = i / (float) steps;
            int column = Math.round(seen[3 * a] + share * dx - 0.5f), row = Math.round(seen[3 * a + 1] + share * dy - 0.5f);
            if (column < 0 || row < 0 || column >= width || row >= height)
                continue;
            int at = row * width + column;
            if (seen[3 * a + 2] + share * dz + lift >= nearness[at])
                pixels[at] = blend(pixels[at], ink);
        }
    }

    private static int shaded(int colour, float light) {
        int r = (int) ((colour >> 16 & 0xff) * light), g = (int) ((colour >> 8 & 0xff) * light), b = (int) ((colour & 0xff) * light);
        return Math.min(255, r) << 16 | Math.min(255, g) << 8 | Math.min(255, b);
    }

    private static int blend(int under, int ink) {
        return ((under & 0xfefefe) >> 1) + ((ink & 0xfefefe) >> 1);
    }
}
