package mouldwright.units;

/** Lengths as boatbuilders write them in a table of offsets: feet, inches and eighths, {@code 2-5-3} for 2 ft 5 3/8 in, with a plus for a
 *  sixteenth more. */
public final class FeetInchesEighths {

    private static final double SIXTEENTH = 0.0254 / 16;
    private static final int PER_INCH = 16;
    private static final int PER_FOOT = 12 * PER_INCH;

    private FeetInchesEighths() { }

    /** A length to the nearest sixteenth of an inch, halves away from zero.
     *  @param metres the length; below zero it has a minus before it
     *  @throws IllegalArgumentException if it is not finite, or more than any body measures */
    public static String of(double metres) {
        if (!(Math.abs(metres) < 1e9))
            throw new IllegalArgumentException("no length to write: " + metres);
        long sixteenths = Math.round(Math.abs(metres) / SIXTEENTH);
        long inches = sixteenths % PER_FOOT / PER_INCH, rest = sixteenths % PER_INCH;
        return (metres < 0 && sixteenths > 0 ? "-" : "") + sixteenths / PER_FOOT + "-" + inches + "-" + rest / 2 + (rest % 2 == 1 ? "+" : "");
    }
}
