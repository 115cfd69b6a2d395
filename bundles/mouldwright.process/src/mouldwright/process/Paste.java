package mouldwright.process;

import java.util.List;

/** Resin thickened with glass bubbles or other filler. */
public final class Paste {

    private Paste() { }

    /**
     * One part of a paste.
     *
     * @param mass    kg
     * @param density kg/m3; of bubbles the density of a particle, not that of the heap
     */
    public record Part(double mass, double density) {

        /** Refuses figures that are not above zero. */
        public Part {
            Require.positive(mass, "mass");
            Require.positive(density, "density");
        }
    }

    /**
     * Density of a paste without air, sum m / sum(m/rho), kg/m3. Source: mixture rule.
     *
     * @param parts at least one
     */
    public static double density(List<Part> parts) {
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a paste needs a part");
        }
        double mass = parts.stream().mapToDouble(Part::mass).sum();
        double volume = parts.stream().mapToDouble(p -> p.mass() / p.density()).sum();
        return mass / volume;
    }
}
