package mouldwright.plan.spec;

import java.util.Objects;
import java.util.Optional;

/** How the foam is brought down to the plates.
 *  @param board       length of the fairing board, metres
 *  @param flexible    the board bends over three plates; else it is straight
 *  @param crownLimit  greatest crown left between two plates, metres
 *  @param filler      what low spots, gouges and voids are filled with; without one a paste of resin and glass bubbles
 *  @param origin      of the block, or of the default */
public record Carve(Given board, boolean flexible, Given crownLimit, Optional<Filler> filler, Origin origin) {
    /** Refuses missing parts. */
    public Carve {
        Objects.requireNonNull(board, "board");
        Objects.requireNonNull(crownLimit, "crown limit");
        Objects.requireNonNull(filler, "filler");
        Objects.requireNonNull(origin, "origin");
    }
}
