package mouldwright.plan.spec;

import mouldwright.units.Dimension;

/** Defaults of what stands on the back of a mould, each with the reason for its figure; the others are in {@link Defaults}. */
public final class MouldDefaults {

    private MouldDefaults() { }

    /** Lap of a stiffener's plies over the mould on either side, m. */
    public static Given stiffenerLap() {
        return assumed("lap of a stiffener", Dimension.LENGTH, 0.050, "50 mm of mat on either side ties a stiffener to the laminate; common practice");
    }

    /** Farthest from one stiffener to the next, m. */
    public static Given stiffenerPitch() {
        return assumed("pitch of stiffeners", Dimension.LENGTH, 0.500, "half a metre between stiffeners keeps a laminate of some millimetres in shape; common practice");
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

    private static Given assumed(String name, Dimension dimension, double value, String reason) {
        return Given.of(name, dimension, value, new Origin.Assumed(reason));
    }
}
