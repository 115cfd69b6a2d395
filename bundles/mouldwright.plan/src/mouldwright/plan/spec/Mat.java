package mouldwright.plan.spec;

import java.util.Objects;
import java.util.Optional;

/** A mat or fabric.
 *  @param areal        dry fibre, kg/m2
 *  @param glass        share of fibre by mass in the cured ply
 *  @param fibre        density of the fibre, kg/m3
 *  @param rollWidth    m
 *  @param rollLength   m
 *  @param lay          rate one person lays it, m2/s */
public record Mat(String name, Given areal, Given glass, Given fibre, Optional<Given> rollWidth,
        Optional<Given> rollLength, Optional<Given> lay, Stock stock) implements Material {
    /** Refuses missing parts. */
    public Mat {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(areal, "areal mass");
        Objects.requireNonNull(glass, "glass share");
    }
}
