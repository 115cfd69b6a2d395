package mouldwright.plan.spec;

import mouldwright.units.Dimension;

/** Defaults of coats and sanding, each with the reason for its figure. A default that is used is listed in the plan as assumed. */
public final class FinishDefaults {

    private FinishDefaults() { }

    /** Wet film of a coat, m. */
    public static Given wetFilm() {
        return Given.byDefault("wet film", Dimension.LENGTH, 200e-6, "neither a wet film nor a coverage is stated; about what one pass of a gun or brush leaves");
    }

    /** Share of a coating that lands on the work. */
    public static Given transfer() {
        return new Given("transfer", Dimension.RATIO, 0.70, 0.75, 0.95, new Origin.Assumed("20 to 30 % of what is sprayed misses, 5 % of what is brushed; common practice"));
    }

    /** Rate one person sands with one grit, m2/s. */
    public static Given sandRate() {
        return new Given("sanding rate", Dimension.AREA_RATE, 1.0 / 3600, 1.5 / 3600, 2.0 / 3600,
                new Origin.Assumed("no rate is stated for this grit; between 1 and 2 m2 an hour and person; common practice"));
    }

    /** Rate one person puts on a coat, m2/s. */
    public static Given coatRate() {
        return new Given("coating rate", Dimension.AREA_RATE, 6 / 3600.0, 10 / 3600.0, 15 / 3600.0,
                new Origin.Assumed("6 to 15 m2 an hour and person, sprayed, brushed or waxed and buffed; from memory of such jobs, so note your own"));
    }

    /** Share of the dry film that is sanded away. */
    public static Given sandedShare() {
        return Given.byDefault("sanded share", Dimension.RATIO, 1.0 / 3, "about a third of a surfacer is sanded off again; common practice");
    }
}
