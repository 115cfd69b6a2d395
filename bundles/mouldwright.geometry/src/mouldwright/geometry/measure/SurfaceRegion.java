package mouldwright.geometry.measure;

import mouldwright.geometry.loft.GirthBand;

/** A part of the surface: a length of the body and a band of its girth, both sides.
 *
 *  @param fromX metres aft
 *  @param toX   metres aft
 *  @param band  of the girth */
public record SurfaceRegion(double fromX, double toX, GirthBand band) { }
