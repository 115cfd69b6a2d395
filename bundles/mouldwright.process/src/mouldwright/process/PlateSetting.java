package mouldwright.process;

/** What a plate that was not set square and to height does to the surface carved to it. */
public final class PlateSetting {

    private PlateSetting() { }

    /**
     * How far a plate that leans or stands off its height carries the surface out, e = d . n with d = (lean z/H, 0, high -
     * low). Source: computed from the set-up readings; first order in small leans.
     *
     * @param lean   of the plate's top out of plumb, m, + aft
     * @param height of the point above the base, m
     * @param plate  height of the plate at which the lean was read, m
     * @param set    how much the plate stands high, m; - low
     * @param normalAft outward unit normal of the surface, its part along the body
     * @param normalUp  the same, its part upward
     * @return m; + stands proud, to be taken off, - stands low, to be filled
     */
    public static double surfaceError(double lean, double height, double plate, double set,
            double normalAft, double normalUp) {
        return Require.finite(lean, "lean") * Require.finite(height, "height") / Require.positive(plate, "plate height")
                * normalAft + Require.finite(set, "set") * normalUp;
    }
}
