package mouldwright.process;

/**
 * One ply of glass and resin by the rule of mixtures. {@code glassFraction} is glass by mass of the laminate, psi in the
 * rules. Beware of rounded sheets: "2.5 : 1 (30 % glass)" is 28.57 %.
 */
public final class Laminate {

    /** Extra resin the first ply takes up on cut foam, kg/m2: mass, not thickness. Common practice, assumed. */
    public static final Range EXTRA_ON_CUT_FOAM = new Range(0.20, 0.35, 0.50);

    private Laminate() { }

    /**
     * Densities of a laminate's parts, kg/m3.
     *
     * @param fibre of the glass itself
     * @param resin of the cured resin
     */
    public record Densities(double fibre, double resin) {

        /** E-glass 2560 and polyester 1200, the figures behind ISO 12215-5's thickness formula. */
        public static final Densities ISO_12215_5 = new Densities(2560, 1200);

        /** Refuses a density that is not above zero. */
        public Densities {
            Require.positive(fibre, "fibre density");
            Require.positive(resin, "resin density");
        }
    }

    /**
     * Cured thickness of a ply by the rule of mixtures, w/rho_f + w(1 - psi)/(rho_m psi).
     *
     * @param fibreMass     dry fibre, kg/m2, positive
     * @param glassFraction glass by mass, 0 to 1, neither included
     * @param rho           densities of glass and cured resin
     * @return m
     */
    public static double curedThickness(double fibreMass, double glassFraction, Densities rho) {
        return Require.positive(fibreMass, "fibre mass") / rho.fibre()
                + resinPerArea(fibreMass, glassFraction) / rho.resin();
    }

    /**
     * The same as ISO 12215-5 writes it, t = w/3.072 (2.56/psi - 1.36) in mm for w in kg/m2; good for E-glass in
     * polyester only, since 3.072 is 2.56 x 1.20 and 1.36 is 2.56 - 1.20.
     *
     * @return m
     */
    public static double curedThicknessIso(double fibreMass, double glassFraction) {
        return Require.positive(fibreMass, "fibre mass") / 3.072
                * (2.56 / Require.fraction(glassFraction, "glass fraction") - 1.36) / 1000;
    }

    /** Resin of a ply, w(1 - psi)/psi, kg/m2. Source: mass balance. */
    public static double resinPerArea(double fibreMass, double glassFraction) {
        double psi = Require.fraction(glassFraction, "glass fraction");
        return Require.positive(fibreMass, "fibre mass") * (1 - psi) / psi;
    }

    /** Glass and resin of a ply together, w/psi, kg/m2. Source: mass balance. */
    public static double massPerArea(double fibreMass, double glassFraction) {
        return Require.positive(fibreMass, "fibre mass") / Require.fraction(glassFraction, "glass fraction");
    }

    /** Density of the laminate, 1/(psi/rho_f + (1 - psi)/rho_m), kg/m3. Source: rule of mixtures. */
    public static double density(double glassFraction, Densities rho) {
        double psi = Require.fraction(glassFraction, "glass fraction");
        return 1 / (psi / rho.fibre() + (1 - psi) / rho.resin());
    }

    /** Share of the volume that is glass. Source: rule of mixtures. */
    public static double fibreVolumeFraction(double glassFraction, Densities rho) {
        return Require.fraction(glassFraction, "glass fraction") / rho.fibre() * density(glassFraction, rho);
    }

    /** Glass by mass of a laminate stated as so many parts of resin to one of glass: 2.5 is 0.2857. */
    public static double glassFraction(double resinToGlass) {
        return 1 / (1 + Require.positive(resinToGlass, "resin to glass"));
    }
}
