package mouldwright.plan.spec;

import mouldwright.process.Pour;
import mouldwright.units.Dimension;

/** Defaults of foam and the pouring of it, each with the reason for its figure. A default that is used is listed in the plan as assumed. */
public final class FillDefaults {

    private FillDefaults() { }

    /** Why bays are poured solid. */
    public static Origin.Assumed solid() {
        return new Origin.Assumed("the fill states neither solid nor a shell");
    }

    /** Why a bay is poured upright. */
    public static Origin.Assumed upright() {
        return new Origin.Assumed("bays are poured as the plug will stand unless a bay says otherwise");
    }

    /** Foam poured past its line, m. */
    public static Given overfill() {
        return Given.byDefault("overfill", Dimension.LENGTH, 0.015, "overfill everywhere, since adding later is hard; common practice");
    }

    /** Share of the stated yield that a pour reaches in practice. */
    public static Given yieldPractice() {
        return new Given("share of the yield reached in practice", Dimension.RATIO, 0.75, 0.90, 1.00,
                new Origin.Assumed("what a pour really fills, as a share of the supplier's table; never above it; common practice"));
    }

    /** Yield of a foam that states no table. */
    public static Given fullYield() {
        return Given.byDefault("yield", Dimension.RATIO, 1, "no yield table is stated: the stated expansion at any temperature");
    }

    /** Expansion of a foam that states none. */
    public static Given expansion() {
        return Given.byDefault("expansion", Dimension.RATIO, 30, "urethane pour foam grows to about 30 times its liquid volume; common practice");
    }

    /** Volume of a foam's A part to its B part where no ratio is stated. */
    public static Foam.Ratio ratio() {
        return new Foam.Ratio(1, 1, true, new Origin.Assumed("two-part pour foams are commonly mixed one to one by volume"));
    }

    /** Greatest pot of foam, kg. */
    public static Given foamPot() {
        return Given.byDefault("foam pot", Dimension.MASS, 1, "start with small pots until the cure is known; common practice");
    }

    /** Cream time, s. */
    public static Given creamTime() {
        return Given.byDefault("cream time", Dimension.TIME, 36, "a pour foam data sheet: 36 s, plus or minus 4");
    }

    /** Time to mix a pot of foam, s. */
    public static Given mixingTime() {
        return Given.byDefault("time to mix a pot of foam", Dimension.TIME, Pour.MIXING_TIME, "a boatbuilding pour foam data sheet: mix time 20 s");
    }

    /** Rate a pot of foam is poured at, kg/s. */
    public static Given pouringRate() {
        return Given.byDefault("pouring rate", Dimension.MASS_RATE, Pour.POURING_RATE, "0.25 kg/s: a pot of 1 kg is emptied in 4 s; from memory, so time your own");
    }

    /** Greatest risen height of one pour, m. */
    public static Given lift() {
        return Given.byDefault("lift", Dimension.LENGTH, 0.200, "no limit is stated; suppliers' words on depth differ widely, so ask yours");
    }

    /** The cup that comes before the first pour, kg. */
    public static Given trialCup() {
        return Given.byDefault("trial cup", Dimension.MASS, 0.200, "a data sheet's laboratory mix of 200 g");
    }

    /** Wait until poured foam is firm, s. */
    public static Given firm() {
        return Given.byDefault("firm time", Dimension.TIME, 30 * 60.0, "a pour foam guide: cured in about 30 min");
    }

    /** Time until a pour has risen, s. */
    public static Given riseTime() {
        return Given.byDefault("rise time", Dimension.TIME, 150, "a supplier of pour foam: full rise in about 150 s");
    }

    /** Wait until foam may be carved, s. */
    public static Given carveAfter() {
        return Given.byDefault("carve after", Dimension.TIME, 24 * 3600.0, "foam goes on curing and warming for a day; common practice");
    }

    /** Thermal diffusivity of rigid urethane foam, m2/s. */
    public static Given foamDiffusivity() {
        return Given.byDefault("thermal diffusivity of foam", Dimension.AREA_RATE, 5e-7,
                "5e-7 m2/s, what rigid urethane foam is commonly taken to have; the wait between lifts rests on it");
    }

    /** Error of weighing a pour and reading its rise, a share. */
    public static Given pourReading() {
        return new Given("error of reading a pour", Dimension.RATIO, -0.05, 0, 0.05,
                new Origin.Assumed("a pot weighed and a rise read on a rough surface are good to about 5 %"));
    }

    /** Distance of stand-offs along a plate's edge, m. */
    public static Given standoffPitch() {
        return Given.byDefault("pitch of stand-offs", Dimension.LENGTH, 0.300, "close enough that thin shuttering does not bulge; common practice");
    }

    /** Extra release film for laps and folds, a share. */
    public static Given filmLap() {
        return new Given("laps and folds of release film", Dimension.RATIO, 0.05, 0.10, 0.20,
                new Origin.Assumed("add 10 % for overlapping sheet work, as a seamanship handbook has it"));
    }

    /** Area of shuttering one person sets and lines, m2/s. */
    public static Given formRate() {
        return new Given("shuttering rate", Dimension.AREA_RATE, 1 / 3600.0, 2 / 3600.0, 3 / 3600.0,
                new Origin.Assumed("1 to 3 m2 an hour and person; from memory of such jobs, so note your own"));
    }

    /** Labour of turning the plug, s of all hands together. */
    public static Given turnLabour() {
        return new Given("labour of turning the plug", Dimension.TIME, 1800, 3600, 7200,
                new Origin.Assumed("several hands or gear, and setting it level again; from memory of such jobs, so note your own"));
    }
}
