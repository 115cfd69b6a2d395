package mouldwright.plan.sheets;

import java.util.Objects;
import java.util.OptionalInt;
import mouldwright.geometry.nest.Turns;

/** How parts are to be laid.
 *  @param turns  how they may lie where no grain decides
 *  @param trials layouts to try of each material; empty for as many as are usual
 *  @param seed   of the search */
public record SheetChoice(Turns turns, OptionalInt trials, long seed) {

    /** Square to the sheet. */
    public static final SheetChoice USUAL = new SheetChoice(Turns.QUARTERS, OptionalInt.empty(), 1);

    /** Refuses missing parts. */
    public SheetChoice {
        Objects.requireNonNull(turns, "turns");
        Objects.requireNonNull(trials, "trials");
    }
}
