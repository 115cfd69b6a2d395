package mouldwright.geometry.nest;

/** A size of sheet there are as many of as are needed.
 *  @param length of a sheet, metres; no shorter than its width
 *  @param width  of a sheet, metres
 *  @param cost   of one, in any unit that all sizes of an order share */
public record NestSheet(double length, double width, double cost) {

    /** Refuses sheets without area and costs without sense. */
    public NestSheet {
        if (!(length > 0 && width > 0 && cost >= 0 && cost < Double.POSITIVE_INFINITY))
            throw new IllegalArgumentException("sheet " + length + " by " + width + " at " + cost);
    }

    /** One that costs what it has of area. */
    public static NestSheet byArea(double length, double width) {
        return new NestSheet(length, width, length * width);
    }

    /** Square metres. */
    public double area() {
        return length * width;
    }
}
