package mouldwright.plan.stage;

import mouldwright.geometry.loft.Side;
import mouldwright.plan.spec.Station;

/** What ends a bay: a plate, or an end of the body that bears none.
 *  @param station the station
 *  @param plugX   station line on the plug: scaled for shrink, and moved in by the build-up at a moulded end, m aft
 *  @param plated  whether a plate stands here
 *  @param side    to which side of the line the plate stands
 *  @param moved   whether it is moved in at a moulded end */
public record Border(Station station, double plugX, boolean plated, Side side, boolean moved) {

    /** @return the station's name */
    public String name() {
        return station.name();
    }

    /** The face that looks aft.
     *  @param thickness of the plates, m
     *  @return m aft on the plug */
    public double aftFace(double thickness) {
        return plated && side == Side.AFT ? plugX + thickness : plugX;
    }

    /** The face that looks forward.
     *  @param thickness of the plates, m
     *  @return m aft on the plug */
    public double forwardFace(double thickness) {
        return plated && side == Side.FORWARD ? plugX - thickness : plugX;
    }
}
