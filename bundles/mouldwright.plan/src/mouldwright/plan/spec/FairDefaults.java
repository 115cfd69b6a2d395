package mouldwright.plan.spec;

import java.util.Optional;
import mouldwright.units.Dimension;

/** Defaults of carving, fairing and mending, each with the reason for its figure. A default that is used is listed in the plan as assumed. */
public final class FairDefaults {

    private FairDefaults() { }

    /** Straight fairing board of 1.2 m and 1.5 mm of crown.
     *  @return the carving rules of a spec that has none */
    public static Carve carve() {
        return new Carve(board(), false, crownLimit(), Optional.empty(), new Origin.Assumed("the spec has no carve block"));
    }

    /** Length of the fairing board, m. */
    public static Given board() {
        return Given.byDefault("board", Dimension.LENGTH, 1.200, "a board about 4 ft long spans bulkheads on flat areas; common practice");
    }

    /** Greatest crown between plates, m. */
    public static Given crownLimit() {
        return Given.byDefault("crown limit", Dimension.LENGTH, 0.0015, "about what surfacer and filler can still hide; common practice");
    }

    /** Rate one person carves foam, m2/s. */
    public static Given carveRate() {
        return new Given("carve rate", Dimension.AREA_RATE, 1 / 3600.0, 1.5 / 3600, 2 / 3600.0,
                new Origin.Assumed("1 to 2 m2 an hour and person; from memory of such jobs, so note your own"));
    }

    /** Rate one person fairs, m2/s. */
    public static Given fairRate() {
        return new Given("fair rate", Dimension.AREA_RATE, 0.75 / 3600, 1 / 3600.0, 1.25 / 3600,
                new Origin.Assumed("about 1 m2 an hour and person; from memory of such jobs, so note your own"));
    }

    /** Labour of mending one place, s. */
    public static Given mendLabour() {
        return new Given("labour of mending a place", Dimension.TIME, 600, 1200, 2400,
                new Origin.Assumed("cleaning out, filling or laying, boarding; from memory of such jobs, so note your own"));
    }

    /** Labour of measuring one place again, s. */
    public static Given remeasureLabour() {
        return Given.byDefault("labour of measuring a place again", Dimension.TIME, 300, "gauge and straightedge; from memory of such jobs, so note your own");
    }

    /** Greatest layer of filler, m. */
    public static Given fillerLayer() {
        return Given.byDefault("filler layer", Dimension.LENGTH, 0.006, "data sheets of body filler: 6 mm (1/4 in) a layer at most");
    }

    /** Greatest total of filler, m. */
    public static Given fillerTotal() {
        return Given.byDefault("filler total", Dimension.LENGTH, 0.012, "filler over about 12 mm cracks; common practice");
    }

    /** Density of body filler, kg/m3. */
    public static Given fillerDensity() {
        return new Given("filler density", Dimension.DENSITY, 1600, 1750, 1900,
                new Origin.Assumed("data sheets of standard body filler, 1.6 to 1.9 kg/l"));
    }

    /** Time until filler may be sanded, s. */
    public static Given fillerHard() {
        return Given.byDefault("filler hard after", Dimension.TIME, 20 * 60.0, "body filler is sandable after about 20 minutes");
    }

    /** Share of the box of depth, length and width that a gouge or void holds. */
    public static Given fullness() {
        return new Given("fullness of a hollow", Dimension.RATIO, 0.5, 2.0 / 3, 1,
                new Origin.Assumed("half an ellipsoid 2/3, half a paraboloid 1/2, straight walls 1"));
    }

    /** Plies that may be laid over a low spot beside the schedule. */
    public static Given extraPlies() {
        return Given.byDefault("extra plies over a low spot", Dimension.RATIO, 2, "more plies fill minor low spots; common practice");
    }

    /** Mass of glass bubbles to one of resin in a paste. */
    public static Given bubbles() {
        return Given.byDefault("glass bubbles to one of resin", Dimension.RATIO, 0.2, "a paste that does not run: 20 parts of bubbles to 100 of resin");
    }

    /** Density of a glass bubble's particle, kg/m3. */
    public static Given bubbleDensity() {
        return Given.byDefault("particle density of glass bubbles", Dimension.DENSITY, 250, "glass bubbles 140 to 480 kg/m3 each, not the heap");
    }
}
