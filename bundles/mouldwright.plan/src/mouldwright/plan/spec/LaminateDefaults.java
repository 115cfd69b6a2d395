package mouldwright.plan.spec;

import mouldwright.units.Dimension;

/** Defaults of mat, resin and the skin, each with the reason for its figure. A default that is used is listed in the plan as assumed. */
public final class LaminateDefaults {

    private LaminateDefaults() { }

    /** Lap of neighbouring pieces, m. */
    public static Given lap() {
        return Given.byDefault("lap", Dimension.LENGTH, 0.050, "laps of 50 mm are common on a plug, 75 to 100 mm in a mould");
    }

    /** Mat spoilt in cutting and laying, as a share of the packed length. */
    public static Given spoiltMat() {
        return new Given("spoilt mat", Dimension.RATIO, 0, 0, 0.15,
                new Origin.Assumed("none where pieces come off the roll as the cut list has them; 10 to 15 % of trim is common where they do not"));
    }

    /** Gel time wanted, s. */
    public static Given gel() {
        return Given.byDefault("gel time", Dimension.TIME, 25 * 60.0, "long enough to lay a pot, short enough not to drain; common practice");
    }

    /** Extra resin of the first ply on cut foam, kg/m2. */
    public static Given onFoam() {
        return new Given("extra resin on foam", Dimension.AREAL_MASS, 0.20, 0.35, 0.50,
                new Origin.Assumed("cut foam drinks resin; common practice, between what cured laminate takes and the 0.5 kg/m2 that primes bare plywood"));
    }

    /** Share of glass in a ply of mat. */
    public static Given glassShare() {
        return Given.byDefault("glass share", Dimension.RATIO, 1 / 3.5, "2.5 of resin to 1 of chopped strand mat by mass, as five published guides have it");
    }

    /** Density of E-glass, kg/m3. */
    public static Given glassDensity() {
        return Given.byDefault("glass density", Dimension.DENSITY, 2560, "E-glass, as ISO 12215-5 takes it");
    }

    /** Density of cured polyester, kg/m3. */
    public static Given curedResin() {
        return Given.byDefault("cured resin density", Dimension.DENSITY, 1200, "cured polyester, as ISO 12215-5 takes it");
    }

    /** Density of liquid polyester, kg/m3. */
    public static Given liquidResin() {
        return Given.byDefault("resin density", Dimension.DENSITY, 1130, "general-purpose polyester data sheet, 1.13 kg/l");
    }

    /** Density of a ketone peroxide, kg/m3. */
    public static Given hardenerDensity() {
        return Given.byDefault("catalyst density", Dimension.DENSITY, 1160, "ketone peroxide in a phlegmatiser, about 1.16 kg/l; a chart that counts 1 g as 1 ml differs");
    }

    /** Greatest pot of resin, kg. */
    public static Given resinPot() {
        return Given.byDefault("resin pot", Dimension.MASS, 1, "start with small pots until the cure is known; common practice");
    }

    /** Rate one person lays mat, m2/s. */
    public static Given layRate() {
        return Given.byDefault("lay rate", Dimension.AREA_RATE, 4 / 3600.0, "about 4 m2 of mat an hour and person; common practice");
    }

    /** Width of a roll, m. */
    public static Given rollWidth() {
        return Given.byDefault("roll width", Dimension.LENGTH, 1.25, "mat is commonly sold 1.25 m wide");
    }
}
