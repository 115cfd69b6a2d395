package mouldwright.process;

/** Lifts and pots of pour foam, and the wait between lifts. */
public final class Pour {

    /** Time to mix a pot, s; data sheet of a boatbuilding pour foam: "mix time 20 s". */
    public static final double MIXING_TIME = 20;

    /** How fast a mixer empties a pot into the cavity, kg/s; an assumed default. */
    public static final double POURING_RATE = 0.25;

    /** Thermal diffusivity of rigid urethane foam, m2/s; an assumed default, shown with every wait that rests on it. */
    public static final double DIFFUSIVITY = 5e-7;

    private Pour() { }

    /**
     * Lifts a cavity is poured in: of equal height, none over the limit.
     *
     * @param height of the cavity across gravity in the attitude it is poured in, overfill included, m
     * @param limit  risen height per pour, m
     * @return at least 1
     */
    public static int lifts(double height, double limit) {
        return Whole.count(height, limit, "lifts");
    }

    /** Time from the first stir to the last drop, s: mixing and pouring. */
    public static double timeFor(double pot) {
        return MIXING_TIME + Require.notNegative(pot, "pot") / POURING_RATE;
    }

    /**
     * The largest pot that is poured out before the foam creams, and keeps the supplier's limit.
     *
     * @param creamTime s
     * @param potLimit  the supplier's, kg
     * @return kg; 0 where the foam creams before it is mixed, so that no pot can be poured by hand
     */
    public static double largestPot(double creamTime, double potLimit) {
        return largestPot(creamTime, potLimit, MIXING_TIME, POURING_RATE);
    }

    /**
     * The same for a crew that mixes and pours in its own time.
     *
     * @param creamTime   s
     * @param potLimit    the supplier's, kg
     * @param mixingTime  of a pot, s
     * @param pouringRate kg/s
     * @return kg; 0 where the foam creams before it is mixed
     */
    public static double largestPot(double creamTime, double potLimit, double mixingTime, double pouringRate) {
        double withinCream = (Require.notNegative(creamTime, "cream time") - Require.notNegative(mixingTime, "mixing time"))
                * Require.positive(pouringRate, "pouring rate");
        return Math.max(0, Math.min(withinCream, Require.positive(potLimit, "pot limit")));
    }

    /**
     * Pots for one lift; pots are counted lift by lift, never on the total. One mixer pours one pot per rise.
     *
     * @param liftMass   kg
     * @param largestPot kg, above zero
     */
    public static int pots(double liftMass, double largestPot) {
        return Whole.count(liftMass, largestPot, "pots");
    }

    /**
     * Wait before the next lift, the longer of the foam's own firm time and s2 / (pi2 a), the time constant of a slab that
     * cools from both faces. Source: heat conduction in a slab, slowest term (textbook); diffusivity assumed.
     *
     * @param firmTime  s
     * @param thickness least thickness of the hot foam, m
     * @return s
     */
    public static double waitBetweenLifts(double firmTime, double thickness) {
        return Math.max(Require.notNegative(firmTime, "firm time"), coolingTime(thickness));
    }

    /** The cooling part of {@link #waitBetweenLifts}, s: 110 mm 0.7 h, 200 mm 2.3 h, 300 mm 5.1 h. */
    public static double coolingTime(double thickness) {
        double s = Require.notNegative(thickness, "thickness of the hot foam");
        return s * s / (Math.PI * Math.PI * DIFFUSIVITY);
    }
}
