package mouldwright.process;

/** Gouges and voids in a carved plug: what they hold, and what mends them by their depth. */
public final class Hollow {

    /** Shares of depth x ellipse: a cone-like nick, a rounded scoop, a straight-sided hole. */
    private static final Range FULLNESS = new Range(1.0 / 2, 2.0 / 3, 1);

    private Hollow() { }

    /** What mends a hollow. */
    public sealed interface Remedy { }

    /**
     * Plies of mat, where they fill it by their cured thickness.
     *
     * @param count how many
     */
    public record Plies(int count) implements Remedy { }

    /**
     * Filler, each layer left to harden before the next.
     *
     * @param layers how many
     */
    public record Filler(int layers) implements Remedy { }

    /** Foam bonded in or poured, and carved again. */
    public record NewFoam() implements Remedy { }

    /**
     * Volume of a hollow of elliptic outline: f d pi/4 a b, with f = 2/3 likely (half an ellipsoid), 1/2 low (half a
     * paraboloid) and 1 high (straight walls). Source: closed forms.
     *
     * @param depth  m
     * @param along  m
     * @param across m
     * @return m3
     */
    public static Range volume(double depth, double along, double across) {
        return FULLNESS.times(Require.positive(depth, "depth") * Math.PI / 4
                * Require.positive(along, "length") * Require.positive(across, "width"));
    }

    /**
     * The remedy by depth: plies up to what they add in thickness, then filler within its limits, beyond that new foam.
     *
     * @param depth      m
     * @param plyCured   cured thickness of one ply laid over it, m; 0 where none is laid
     * @param pliesMost  plies that may be added, 0 or more
     * @param layerLimit of the filler, m
     * @param totalLimit of the filler, m
     */
    public static Remedy remedy(double depth, double plyCured, int pliesMost, double layerLimit, double totalLimit) {
        Require.positive(depth, "depth");
        Require.notNegative(plyCured, "cured thickness");
        if (plyCured > 0 && depth <= plyCured * pliesMost) {
            return new Plies(Whole.count(depth, plyCured, "plies"));
        }
        return depth <= Require.positive(totalLimit, "total limit")
                ? new Filler(fillerLayers(depth, layerLimit)) : new NewFoam();
    }

    /** Layers of filler for a depth, none over the layer limit. */
    public static int fillerLayers(double depth, double layerLimit) {
        return Whole.count(depth, layerLimit, "layers");
    }
}
