package mouldwright.plan.spec;

import java.util.Objects;
import java.util.Optional;

/** Sheet material for plates.
 *  @param width      m
 *  @param length     m
 *  @param thickness  nominal, m
 *  @param density    kg/m3
 *  @param kerf       of the cut, m
 *  @param margin     left along the edges, m
 *  @param grain      which way its face grain runs */
public record Sheet(String name, Given width, Given length, Given thickness, Given density, Optional<Given> kerf, Optional<Given> margin, Grain grain,
        Stock stock) implements Material {
    /** Which way the face grain of a sheet runs. */
    public enum Grain {
        /** Not stated: parts are laid without regard to it. */
        ANY,
        /** With the longer side. */
        ALONG,
        /** With the shorter side. */
        ACROSS
    }

    /** Refuses missing parts. */
    public Sheet {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(grain, "grain");
    }
}
