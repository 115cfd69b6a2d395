package mouldwright.plan.spec;

import java.util.Optional;
import mouldwright.units.Dimension;

/** Defaults of the mould and what stands on its back, each with the reason for its figure. A default that is used is listed in the plan as assumed. */
public final class MouldDefaults {

    private MouldDefaults() { }

    /** Lap of neighbouring pieces in a mould, m. */
    public static Given mouldLap() {
        return Given.byDefault("lap in the mould", Dimension.LENGTH, 0.075, "mat overlaps of 75 to 100 mm in a mould: Practical Action, Fibreglass boat building");
    }

    /** Length of a piece of mat in a mould, m. */
    public static Given mouldPiece() {
        return Given.byDefault("piece of mat in the mould", Dimension.LENGTH, 1.25, "a piece no longer than a roll is wide can be laid by one person; common practice");
    }

    /** Labour of taking a mould off its plug and trimming it, s. */
    public static Given unmouldLabour() {
        return new Given("labour of taking the mould off", Dimension.TIME, 2 * 3600.0, 4 * 3600.0, 8 * 3600.0,
                new Origin.Assumed("wedges, air and water, then trimming and drilling flanges; from memory of such jobs, so note your own"));
    }

    /** Least draft, radians. */
    public static Given draft() {
        return Given.byDefault("draft", Dimension.ANGLE, Math.toRadians(2), "1 to 1.5 degrees is desirable, 2 to 5 is asked for by others; common practice");
    }

    /** One piece, pulled up.
     *  @return what a mould that names no parts is made of */
    public static Mould.Part onePiece() {
        return new Mould.Part(Optional.empty(), new Mould.Reach.Everything(), Mould.Pull.UP,
                new Origin.Assumed("the mould names no parts"));
    }

    /** Flange width, m. */
    public static Given flange() {
        return Given.byDefault("flange", Dimension.LENGTH, 0.075, "flanges of 50 to 150 mm are common");
    }

    /** Time the mould stays on the plug, s. */
    public static Given hold() {
        return Given.byDefault("hold", Dimension.TIME, 14 * 86400.0, "up to three weeks are advised, two are common");
    }

    /** Lap of a stiffener's plies over the mould on either side, m. */
    public static Given stiffenerLap() {
        return Given.byDefault("lap of a stiffener", Dimension.LENGTH, 0.050, "50 mm of mat on either side ties a stiffener to the laminate; common practice");
    }

    /** Farthest from one stiffener to the next, m. */
    public static Given stiffenerPitch() {
        return Given.byDefault("pitch of stiffeners", Dimension.LENGTH, 0.500, "half a metre between stiffeners keeps a laminate of some millimetres in shape; common practice");
    }

    /** Stiffeners that name no core are hollow. */
    public static Tacit hollow() {
        return new Tacit.Choice("core of a stiffener", "hollow", new Origin.Assumed("the stiffener names no sheet, so it is laid over a former of paper or tube"));
    }

    /** Labour of fitting and setting a core or former, s/m. */
    public static Given stiffenerFitting() {
        return new Given("fitting of a metre of stiffener", Dimension.TIME, 300, 600, 1200,
                new Origin.Assumed("cut to the curve, set in putty and radiused; from memory of such jobs, so note your own"));
    }

    /** Share of a sheet that ends up in cores. */
    public static Given coreUse() {
        return new Given("share of a sheet used for cores", Dimension.RATIO, 0.40, 0.70, 1.00,
                new Origin.Assumed("straight strips use nearly all of a sheet, strips cut to a curve about half; common practice"));
    }
}
