package mouldwright.services;

import java.util.Optional;
import java.util.OptionalDouble;
import mouldwright.units.Unit;

/** How a table or drawing is to be made into a spec.
 *  @param name      of the plug
 *  @param units     of lengths, where the file names none
 *  @param tolerance how near ends of drawn lines are joined and how closely sections follow them, metres
 *  @param every     how far apart stations stand, metres, where the file does not say where they do
 *  @param full      whether drawn sections go all round; of a table its figures tell */
public record ImportOrder(String name, Optional<Unit> units, double tolerance, OptionalDouble every, boolean full) { }
