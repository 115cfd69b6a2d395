package mouldwright.geometry.frame;

import java.util.List;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;

/** Makes plates from a body. */
public final class Plates {
    /** Makes one plate.
     *  @param loft  the body, scaled for shrink already
     *  @param order what is wanted; a face past an end of the body is taken at the end */
    public static PlateResult make(Loft loft, PlateOrder order) { throw new UnsupportedOperationException("being written"); }
    /** To which side each plate stands: the first aft, the last forward, the others toward the neighbour of larger area,
     *  a tie aft.
     *  @param loft     the body
     *  @param stations station lines, metres aft, increasing, pointed ends among them */
    public static List<Side> sides(Loft loft, List<Double> stations) { throw new UnsupportedOperationException("being written"); }
    /** Clear length of a bay between two station lines.
     *  @param length between the station lines, metres
     *  @param foreThickness of the forward plate, metres @param foreSide to which side it stands
     *  @param aftThickness  of the after plate, metres   @param aftSide  to which side it stands
     *  @return L - T [forward plate stands aft] - T [after plate stands forward], metres */
    public static double clearLength(double length, double foreThickness, Side foreSide, double aftThickness, Side aftSide) { throw new UnsupportedOperationException("being written"); }
    /** Largest bevel of the moulded surface at a station, radians, not negative. */
    public static double largestBevel(Loft loft, double x, Side side, Bare bare) { throw new UnsupportedOperationException("being written"); }
}
