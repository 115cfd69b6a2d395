package mouldwright.geometry.loft;

import mouldwright.geometry.section.Section;

/** A section that shapes the body.
 *
 *  @param x       metres aft of the datum
 *  @param section its outline
 *  @param crease  whether the body may turn a corner along its length here */
public record LoftStation(double x, Section section, boolean crease) { }
