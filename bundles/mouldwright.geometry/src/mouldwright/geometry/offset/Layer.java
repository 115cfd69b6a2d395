package mouldwright.geometry.offset;

import mouldwright.geometry.loft.GirthBand;

/** A thickness over a part of the surface; where layers overlap they add.
 *
 *  @param fromX     forward end, metres aft, inside the layer
 *  @param toX       after end, metres aft; a surface taken from its forward side counts as inside there
 *  @param band      of the girth, both sides
 *  @param thickness metres along the surface normal, not negative */
public record Layer(double fromX, double toX, GirthBand band, double thickness) { }
