package mouldwright.process;

/**
 * Styrene that goes into the air, and the air that thins it out. A figure for planning only: it never stands for a
 * permission. The supplier's data sheet, the exposure limits of the place and a competent person come first.
 */
public final class Air {

    /** Molar mass of styrene, kg/mol. */
    public static final double STYRENE_MOLAR_MASS = 0.10415;

    /** What the room's air is to be kept to, parts per million; assumed default, the ACGIH figure of 1996. */
    public static final double TARGET_PPM = 20;

    /** Mixing factor: how much more air than perfectly mixed air would need; 3, up to 10 in a badly swept room. */
    public static final Range MIXING = new Range(3, 3, 10);

    /** Litres of one mole of gas at 25 degC and one atmosphere. */
    private static final double MOLAR_LITRES = 24.45;

    private static final double STANDARD_KELVIN = 298.15;
    private static final double ZERO_CELSIUS = 273.15;

    private Air() { }

    /** How a material is put on. */
    public enum Application {
        /** Resin by brush, roller or flow coater: 0.014 H^2.275. */
        RESIN_NOT_ATOMISED(0.014, 2.275),
        /** Resin through a spray gun: 0.014 H^2.425. */
        RESIN_ATOMISED(0.014, 2.425),
        /** Gel coat: 0.445 H^1.675. */
        GEL_COAT(0.445, 1.675);

        private final double factor;
        private final double exponent;

        Application(double factor, double exponent) {
            this.factor = factor;
            this.exponent = exponent;
        }
    }

    /**
     * Styrene released, kg for each kg applied. Source: US 40 CFR 63 subpart VVVV table 3, which states kg per Mg with H in
     * percent.
     *
     * @param styrene share of the resin's or gel coat's mass, above 0 and below 1
     */
    public static double styrenePerMass(Application application, double styrene) {
        double percent = 100 * Require.fraction(styrene, "styrene content");
        return application.factor * Math.pow(percent, application.exponent) / 1000;
    }

    /**
     * Rate of release of a session, kg/s; the worst session of a job governs the air.
     *
     * @param mass     resin or gel coat put on, kg
     * @param perMass  as from {@link #styrenePerMass}
     * @param duration of the session, s
     */
    public static double release(double mass, double perMass, double duration) {
        return Require.notNegative(mass, "mass") * Require.notNegative(perMass, "release per mass")
                / Require.positive(duration, "duration");
    }

    /**
     * Dilution air, Q = K G / (C MW / Vm) with Vm = 24.45 l/mol (273.15 + T)/298.15. Source: general ventilation for an
     * even release, gas law.
     *
     * @param release     G, vapour given off, kg/s
     * @param molarMass   MW, kg/mol
     * @param ppm         C, what the air is to be kept to, parts per million by volume
     * @param mixing      K, 1 for perfect mixing, 3 to 10 in rooms
     * @param temperature degC
     * @return m3/s
     */
    public static double dilution(double release, double molarMass, double ppm, double mixing, double temperature) {
        double perCubicMetre = concentration(Require.positive(ppm, "target"), molarMass, temperature);
        if (!(mixing >= 1 && Double.isFinite(mixing))) {
            throw new IllegalArgumentException("mixing factor must be 1 or more: " + mixing);
        }
        return mixing * Require.notNegative(release, "release") / perCubicMetre;
    }

    /** Vapour in a cubic metre of air at a level in parts per million, kg/m3: 1 ppm of styrene at 25 degC is 4.26 mg/m3. */
    public static double concentration(double ppm, double molarMass, double temperature) {
        double kelvin = ZERO_CELSIUS + Require.finite(temperature, "temperature");
        double molarVolume = MOLAR_LITRES / 1000 * Require.positive(kelvin, "absolute temperature") / STANDARD_KELVIN;
        return Require.notNegative(ppm, "level") * 1e-6 * Require.positive(molarMass, "molar mass") / molarVolume;
    }
}
