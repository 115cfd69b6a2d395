package mouldwright.workbench.views.surface;

/**
 * Colours from blue through a pale middle to sand, told apart by people who do not tell red from green, and by their lightness alone.
 *
 * @param low  the figure shown deep blue
 * @param high the figure shown dark sand
 */
public record Ramp(double low, double high) {

    private static final int[] STEPS = {0x1f4e79, 0x4f81ad, 0x9dbcd6, 0xe6e6de, 0xe3cf9f, 0xc9a45c, 0x8a6420};

    /** Colour of a surface that has no figure. */
    static final int NOTHING = 0xb8bab8;

    /** A colour, red, green and blue by bytes. */
    public int colour(double figure) {
        if (Double.isNaN(figure))
            return NOTHING;
        double at = high > low ? Math.clamp((figure - low) / (high - low), 0, 1) * (STEPS.length - 1) : (STEPS.length - 1) / 2.0;
        int step = Math.min(STEPS.length - 2, (int) at);
        return mixed(STEPS[step], STEPS[step + 1], at - step);
    }

    /** Colours of as many figures as a table has, from low to high, so that filling a picture need not mix any. */
    int[] table(int size) {
        int[] table = new int[size];
        for (int i = 0; i < size; i++)
            table[i] = colour(low + (high - low) * i / (size - 1));
        return table;
    }

    private static int mixed(int a, int b, double share) {
        int result = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int from = a >> shift & 0xff, to = b >> shift & 0xff;
            result |= (int) Math.round(from + (to - from) * share) << shift;
        }
        return result;
    }
}
