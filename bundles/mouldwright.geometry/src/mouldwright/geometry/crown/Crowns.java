package mouldwright.geometry.crown;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;

/** Measures how far the surface between plates stands off a board. The controlling line of a plate is its station line.
 *  Long work ends with a CancellationException once it is cancelled. */
public final class Crowns {
    /** More sub-bays than this are no way to build a plug. */
    private static final int MOST_BAYS = 64;

    private Crowns() { }

    /** Crown under a stiff board, which lies along the chord between equal shares of the two controlling lines. A place is
     *  measured along its outward normal from the foot of the perpendicular on the board.
     *  @param loft      the body
     *  @param foreX     forward controlling line, metres aft
     *  @param aftX      after controlling line, metres aft
     *  @param bare      not looked at
     *  @param cancelled asked per section */
    public static Crown stiff(Loft loft, double foreX, double aftX, Bare bare, BooleanSupplier cancelled) {
        Board board = new StiffBoard(loft.at(foreX, Side.AFT), loft.at(aftX, Side.FORWARD));
        return new CrownSearch(loft, foreX, aftX, bare, board, cancelled).search();
    }

    /** Crown under a board that bends over the plates, as a spline through equal shares of their outlines.
     *  @param loft      the body
     *  @param plates    controlling lines of all plates, metres aft, increasing, those of the bay among them
     *  @param foreX     forward controlling line of the bay, metres aft
     *  @param aftX      after controlling line of the bay, metres aft
     *  @param bare      not looked at
     *  @param cancelled asked per section */
    public static Crown flexible(Loft loft, List<Double> plates, double foreX, double aftX, Bare bare,
            BooleanSupplier cancelled) {
        Board board = new FlexibleBoard(loft, plates, foreX, aftX);
        return new CrownSearch(loft, foreX, aftX, bare, board, cancelled).search();
    }

    /** How many equal sub-bays a stiff board needs: n = ceil(sqrt(crown / limit)) since the crown falls with the square of the
     *  length, raised until each of them passes; convex and hollow crowns count alike.
     *  @param loft      the body
     *  @param foreX     forward controlling line, metres aft
     *  @param aftX      after controlling line, metres aft
     *  @param limit     crown allowed, metres; one that is not positive is never met
     *  @param bare      not looked at
     *  @param cancelled asked per section */
    public static Subdivision divide(Loft loft, double foreX, double aftX, double limit, Bare bare,
            BooleanSupplier cancelled) {
        double whole = stiff(loft, foreX, aftX, bare, cancelled).height();
        if (whole <= limit || !(limit > 0))
            return new Subdivision(1, List.of(), whole, whole <= limit);
        int bays = (int) Math.min(MOST_BAYS, Math.ceil(Math.sqrt(whole / limit)));
        double worst = worst(loft, foreX, aftX, bays, bare, cancelled);
        while (worst > limit && bays < MOST_BAYS) {
            bays++;
            worst = worst(loft, foreX, aftX, bays, bare, cancelled);
        }
        List<Double> stations = new ArrayList<>();
        for (int i = 1; i < bays; i++)
            stations.add(border(foreX, aftX, bays, i));
        return new Subdivision(bays, stations, worst, worst <= limit);
    }

    private static double worst(Loft loft, double foreX, double aftX, int bays, Bare bare, BooleanSupplier cancelled) {
        double worst = 0;
        for (int i = 0; i < bays; i++)
            worst = Math.max(worst, stiff(loft, border(foreX, aftX, bays, i), border(foreX, aftX, bays, i + 1), bare, cancelled)
                    .height());
        return worst;
    }

    private static double border(double foreX, double aftX, int bays, int i) {
        return i == bays ? aftX : foreX + (aftX - foreX) * i / bays;
    }
}
