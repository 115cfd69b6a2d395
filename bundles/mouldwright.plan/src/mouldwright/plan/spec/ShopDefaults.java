package mouldwright.plan.spec;

import mouldwright.units.Dimension;

/** Defaults of the programme, the order list and the air, each with the reason for its figure; the others are in {@link Defaults}. */
public final class ShopDefaults {

    private ShopDefaults() { }

    /** Working days of a week. */
    public static WorkingWeek week() {
        return new WorkingWeek(java.time.DayOfWeek.MONDAY, java.time.DayOfWeek.FRIDAY, new Origin.Assumed("a common week of five days"));
    }

    /** How the air is thinned out.
     *  @param shop temperature, taken for that of the air */
    public static Airing air(Given shop) {
        return new Airing(airLimit(), airMixing(), shop);
    }

    /** What the styrene in the air is to be kept to, a share by volume. */
    public static Given airLimit() {
        return assumed("styrene limit in the air", Dimension.RATIO, 20e-6,
                "20 ppm, the ACGIH figure of 1996; laws differ between 10 and 100 ppm, and the law of the place counts");
    }

    /** Mixing factor of the air. */
    public static Given airMixing() {
        return new Given("mixing factor of the air", Dimension.RATIO, 3, 3, 10,
                new Origin.Assumed("3 for a room that is swept well, up to 10 for one that is not; common practice"));
    }

    /** Labour of one bulkhead, s. */
    public static Given plateLabour() {
        return new Given("labour of a bulkhead", Dimension.TIME, 0.75 * 3600, 1.5 * 3600, 3 * 3600.0,
                new Origin.Assumed("marking out, cutting and setting up square; from memory of such jobs, so note your own"));
    }

    /** Wait until a laminate is hard, s. */
    public static Given hard() {
        return assumed("hard after", Dimension.TIME, 12 * 3600.0, "left overnight before it is sanded; common practice");
    }

    /** Share of resin that stays in pots, on rollers and brushes. */
    public static Given resinWaste() {
        return new Given("waste of resin", Dimension.RATIO, 0.10, 0.15, 0.20,
                new Origin.Assumed("about 15 % as an epoxy maker's guide has it, 15 to 20 % a dealer's"));
    }

    /** Styrene in a polyester that states none, a share by mass. */
    public static Given styrene() {
        return new Given("styrene", Dimension.RATIO, 0.30, 0.35, 0.45, new Origin.Assumed("common laminating resins and gel coats hold 30 to 45 %"));
    }

    /** Weight one person is asked to lift at most, kg. */
    public static Given liftPerPerson() {
        return assumed("lift per person", Dimension.MASS, 25,
                "25 kg is a common guideline for good handling close to the body; the law of the place and the person count");
    }

    private static Given assumed(String name, Dimension dimension, double value, String reason) {
        return Given.of(name, dimension, value, new Origin.Assumed(reason));
    }
}
