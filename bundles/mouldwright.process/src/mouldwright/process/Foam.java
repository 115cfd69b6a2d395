package mouldwright.process;

/**
 * Two-part urethane foam poured into a cavity. Mass governs: a foam of free-rise density rho that reaches the share y of
 * its expansion fills V with V rho / y, whatever its liquid weighs.
 *
 * <p>Figures are for planning and give way to the supplier's sheet: urethane foam heats itself, and too much mixed or
 * poured at once scorches or burns.
 */
public final class Foam {

    /** The cup that comes first, to see cream and rise time in today's shop, kg. Common practice. */
    public static final double TRIAL_CUP = 0.200;

    /** Least overfill beyond the convex crown, m: what a saw and a board take off. Common practice. */
    public static final double OVERFILL_OVER_CROWN = 0.005;

    /** An opening wider than this many depths holds a pour badly. Common practice. */
    public static final double BROAD = 3.0;

    private Foam() { }

    /**
     * Mass of mixed foam to fill a cavity, m = V rho / y. Source: definition of yield, "x lb of liquid give 1 ft3 of
     * x lb/ft3 foam", divided by the share reached.
     *
     * @param cavity  m3
     * @param density free-rise density of the foam, kg/m3
     * @param yield   share of the nominal expansion reached, above 0 and at most 1
     * @return kg
     */
    public static double mass(double cavity, double density, double yield) {
        return Require.notNegative(cavity, "cavity") * Require.positive(density, "foam density")
                / Require.share(yield, "yield");
    }

    /**
     * Liquid of a known mass, m / rho.
     *
     * @param mass         kg
     * @param mixedDensity density of the mixed liquid, kg/m3
     * @return m3
     */
    public static double liquidOfMass(double mass, double mixedDensity) {
        return Require.notNegative(mass, "mass of mix") / Require.positive(mixedDensity, "density of the mix");
    }

    /**
     * Liquid where the components' densities are not known, V / (expansion y). Source: common practice, expansion about
     * 30 for a foam of 2 lb/ft3.
     *
     * @param cavity    m3
     * @param expansion nominal volume of foam to one of liquid, above 1
     * @param yield     share of it reached, above 0 and at most 1
     * @return m3
     */
    public static double liquidByExpansion(double cavity, double expansion, double yield) {
        if (!(expansion > 1 && Double.isFinite(expansion))) {
            throw new IllegalArgumentException("expansion must be above 1: " + expansion);
        }
        return Require.notNegative(cavity, "cavity") / (expansion * Require.share(yield, "yield"));
    }

    /** Density of the foam as it stands in the plug, rho / y, kg/m3; a foam that rose less is denser. */
    public static double densityInPlace(double density, double yield) {
        return Require.positive(density, "foam density") / Require.share(yield, "yield");
    }

    /**
     * The yield a recorded pour reached, V rho / m, for the rest of the job; at most 1, since a foam cannot be had lighter
     * than its free rise by measuring generously.
     *
     * @param mass    poured, kg
     * @param risen   volume it rose to, m3
     * @param density free-rise density, kg/m3
     */
    public static double yieldOf(double mass, double risen, double density) {
        return Math.min(1, Require.positive(risen, "risen volume") * Require.positive(density, "foam density")
                / Require.positive(mass, "mass poured"));
    }

    /** Least overfill of a bay, m: its convex crown, or none if it is hollow, and {@link #OVERFILL_OVER_CROWN}. */
    public static double leastOverfill(double crown) {
        return Math.max(0, Require.finite(crown, "crown")) + OVERFILL_OVER_CROWN;
    }

    /** Whether a cavity is so broad for its depth that foam packed or poured from inside does better. */
    public static boolean isBroadAndShallow(double opening, double depth) {
        return Require.notNegative(opening, "opening") > BROAD * Require.positive(depth, "depth");
    }
}
