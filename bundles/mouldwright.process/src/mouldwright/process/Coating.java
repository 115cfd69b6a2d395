package mouldwright.process;

import java.util.List;

/** Surfacer, gel coat, wax and film. */
public final class Coating {

    /** Share of a surfacer's dry film that sanding takes off. Assumed default. */
    public static final double SANDED_SHARE = 1.0 / 3;

    private Coating() { }

    /**
     * What one grit takes.
     *
     * @param grit number on the paper
     * @param rate m2/s
     */
    public record Grit(int grit, double rate) {

        /** Refuses a rate that is not above zero. */
        public Grit {
            Require.positive(grit, "grit");
            Require.positive(rate, "sanding rate");
        }
    }

    /**
     * Coating for a number of coats by film thickness, coats x area x wet / transfer, m3. Source: geometry; 1 l/m2 is a film of
     * 1 mm.
     *
     * @param area     m2
     * @param wet      wet film of one coat, m
     * @param transfer share of what leaves the gun or brush that stays on the work, above 0 and at most 1
     * @param coats    0 or more
     */
    public static double volumeByFilm(double area, double wet, double transfer, int coats) {
        return Require.notNegative(coats, "coats") * Require.notNegative(area, "area") * Require.positive(wet, "wet film")
                / Require.share(transfer, "transfer");
    }

    /**
     * Coating by spread, coats x area / coverage.
     *
     * @param coverage m2/kg, giving kg; or m2/m3, giving m3
     */
    public static double byCoverage(double area, double coverage, int coats) {
        return Require.notNegative(coats, "coats") * Require.notNegative(area, "area")
                / Require.positive(coverage, "coverage");
    }

    /** Wet film that a mass per area makes, m: 0.625 kg/m2 at 1200 kg/m3 are 0.521 mm. */
    public static double filmOf(double massPerArea, double density) {
        return Require.notNegative(massPerArea, "mass per area") / Require.positive(density, "density");
    }

    /**
     * What a coating adds to the plug once it is sanded, coats x dry x (1 - sanded share), m.
     *
     * @param dry         dry film of one coat, m
     * @param coats       0 or more
     * @param sandedShare 0 to 1; {@link #SANDED_SHARE} where none is stated
     */
    public static double buildUp(double dry, int coats, double sandedShare) {
        if (!(sandedShare >= 0 && sandedShare <= 1)) {
            throw new IllegalArgumentException("sanded share must be from 0 to 1: " + sandedShare);
        }
        return Require.notNegative(dry, "dry film") * Require.notNegative(coats, "coats") * (1 - sandedShare);
    }

    /** Working time to sand an area through a ladder of grits, s: the sum of area / rate. */
    public static double sandingTime(double area, List<Grit> ladder) {
        return ladder.stream().mapToDouble(grit -> Require.notNegative(area, "area") / grit.rate()).sum();
    }
}
