package mouldwright.geometry.loft;

/** A part of one stretch.
 *
 *  @param stretch from 0
 *  @param fromU   share of the stretch where it begins
 *  @param toU     share of the stretch where it ends, not less */
public record GirthRange(int stretch, double fromU, double toU) { }
