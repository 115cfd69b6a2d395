package mouldwright.geometry.section;

/** A place on a section.
 *
 *  @param stretch  from 0
 *  @param u        share of the stretch, 0 to 1
 *  @param distance from the point it was sought for, metres */
public record SectionPlace(int stretch, double u, double distance) { }
