package mouldwright.geometry.section;

/** What is checked of a section beyond what must hold.
 *
 *  @param overshootLimit how far, in metres, the curve between two points may leave the box round the four nearest points
 *                        of its stretch before it is reported; infinite to report nothing */
public record SectionRules(double overshootLimit) {
    /** Reports no overshoot. */
    public static final SectionRules LENIENT = new SectionRules(Double.POSITIVE_INFINITY);
}
