package mouldwright.plan.spec;

import mouldwright.units.Dimension;

/** Defaults of shop and crew, the programme, the order list and the air, each with the reason for its figure. */
public final class ShopDefaults {

    private ShopDefaults() { }

    /** Shop temperature, degC. */
    public static Given shopTemperature() {
        return Given.byDefault("shop temperature", Dimension.TEMPERATURE, 20,
                "gel times and foam yields are commonly stated at 20 degC");
    }

    /** Persons at work. */
    public static Given persons() {
        return Given.byDefault("crew", Dimension.RATIO, 1, "the spec states no crew, so one person is reckoned with");
    }

    /** Working day, s. */
    public static Given day() {
        return Given.byDefault("working day", Dimension.TIME, 8 * 3600.0, "a common working day of eight hours");
    }

    /** Labour of one pot, s. */
    public static Given potLabour() {
        return new Given("labour of a pot", Dimension.TIME, 3 * 60, 5 * 60, 10 * 60.0,
                new Origin.Assumed("weighing, mixing and cleaning up; from memory of such jobs, so note your own"));
    }

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
        return Given.byDefault("styrene limit in the air", Dimension.RATIO, 20e-6,
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
        return Given.byDefault("hard after", Dimension.TIME, 12 * 3600.0, "left overnight before it is sanded; common practice");
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
        return Given.byDefault("lift per person", Dimension.MASS, 25,
                "25 kg is a common guideline for good handling close to the body; the law of the place and the person count");
    }
}
