package mouldwright.geometry.section;

/** What is wrong with a section as given. Points are counted from 0 in the order given; places are in metres. */
public sealed interface SectionFault {

    /** Whether no section can be made while the fault stands. */
    default boolean blocking() { return true; }

    /** An outline needs two points at least. @param given how many there are */
    record TooFewPoints(int given) implements SectionFault { }

    /** A coordinate is not a number, or lies more than a thousand kilometres off. @param point the point */
    record NotFinite(int point) implements SectionFault { }

    /** A figure of a section form that makes no sense (exponent, size, factor, share, radius).
     *  @param what  the figure in the words of the trade
     *  @param value as given */
    record BadFigure(String what, double value) implements SectionFault { }

    /** Two points that follow one another lie at one place. @param first and @param second the points */
    record PointsDoubled(int first, int second) implements SectionFault { }

    /** The outline crosses itself, or the centreline in a half section. @param y @param z where */
    record CrossesItself(double y, double z) implements SectionFault { }

    /** The outline runs clockwise seen from aft: top first, or port side first. */
    record WrongWayRound() implements SectionFault { }

    /** A full section does not start or end at the centreline. @param point the point @param y its half-breadth */
    record NotOnCentreline(int point, double y) implements SectionFault { }

    /** A full section does not end where it starts. @param gap distance, metres */
    record NotClosed(double gap) implements SectionFault { }

    /** A half section has a point on the port side. @param point the point @param y its half-breadth */
    record NegativeHalfBreadth(int point, double y) implements SectionFault { }

    /** A corner cannot be rounded to its radius. @param point the corner @param radius as asked
     *  @param largest the largest radius that would fit between straight stretches, metres */
    record RadiusDoesNotFit(int point, double radius, double largest) implements SectionFault { }

    /** The curve after a point swings past its neighbours; the section is made all the same.
     *  @param point the point before the swing @param y @param z where it is worst @param by how far, metres */
    record Overshoot(int point, double y, double z, double by) implements SectionFault {
        @Override public boolean blocking() { return false; }
    }

    /** A line is placed where the outline does not pass. @param line its name */
    record LineNotPlaced(String line) implements SectionFault { }

    /** A line is on a half section more than once, or on a full section more than twice. @param line its name */
    record LineTwice(String line) implements SectionFault { }
}
