package mouldwright.geometry.frame;

import mouldwright.geometry.loft.Side;
import mouldwright.geometry.offset.BuildUp;

/** A plate to be made at a station.
 *
 *  @param x         where one face stands: the station line, metres aft
 *  @param thickness of the sheet as measured, metres, positive
 *  @param side      to which side of the station line the plate stands
 *  @param edges     how its edge is cut
 *  @param buildUp   what is taken off the surface */
public record PlateOrder(double x, double thickness, Side side, EdgeForm edges, BuildUp buildUp) { }
