package mouldwright.geometry.crown;

import java.util.List;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.Loft;

/** Measures how far the surface between plates stands off a board. The controlling line of a plate is its station line.
 *  Long work ends with a CancellationException once it is cancelled. */
public final class Crowns {
    /** Crown under a stiff board, which lies along the chord between equal shares of the two controlling lines.
     *  @param foreX @param aftX controlling lines, metres aft
     *  @param bare  not looked at */
    public static Crown stiff(Loft loft, double foreX, double aftX, Bare bare, BooleanSupplier cancelled) { throw new UnsupportedOperationException("being written"); }
    /** Crown under a board that bends over the plates, as a spline through equal shares of their outlines.
     *  @param plates controlling lines of all plates, metres aft, increasing, two at least */
    public static Crown flexible(Loft loft, List<Double> plates, double foreX, double aftX, Bare bare,
            BooleanSupplier cancelled) { throw new UnsupportedOperationException("being written"); }
    /** How many equal sub-bays a stiff board needs: n = ceil(sqrt(crown / limit)), raised until each of them passes.
     *  @param limit crown allowed, metres, positive */
    public static Subdivision divide(Loft loft, double foreX, double aftX, double limit, Bare bare,
            BooleanSupplier cancelled) { throw new UnsupportedOperationException("being written"); }
}
