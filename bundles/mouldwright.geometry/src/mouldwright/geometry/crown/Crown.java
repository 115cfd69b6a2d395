package mouldwright.geometry.crown;

import java.util.Optional;

/** How far the surface of a bay stands off a board laid between its two controlling lines.
 *
 *  @param foreX  forward controlling line, metres aft
 *  @param aftX   after controlling line, metres aft
 *  @param convex highest place; empty if nowhere proud of the board
 *  @param hollow deepest place; empty if nowhere hollow */
public record Crown(double foreX, double aftX, Optional<CrownPeak> convex, Optional<CrownPeak> hollow) {
    /** The larger of the two with its sign, 0 if the board touches everywhere; metres. */
    public double signedHeight() {
        double up = convex.map(CrownPeak::height).orElse(0.0);
        double down = hollow.map(CrownPeak::height).orElse(0.0);
        return up >= -down ? up : down;
    }

    /** The larger of the two without sign, metres. */
    public double height() {
        return Math.abs(signedHeight());
    }
}
