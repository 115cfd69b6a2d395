package mouldwright.check;

import mouldwright.plan.spec.Form;

/** Points of a section as a spec states them. */
final class Points {

    /** Decimal places of a millimetre that are kept: nobody measures finer. */
    private static final int PLACES = 4;

    private Points() { }

    /** A point with its corner rounded.
     *  @param radius m */
    static String words(Form.Point point, double radius) {
        return place(point.y(), point.z()) + " knuckle" + point.line().map(line -> " " + line).orElse("") + " radius " + Findings.exact(radius, PLACES)
                + (point.bare() ? " bare" : "");
    }

    /** A point that is a knuckle. */
    static String knuckle(Form.Point point) {
        return place(point.y(), point.z()) + " knuckle";
    }

    /** A point without a corner. */
    static String place(double y, double z) {
        return Findings.exact(y, PLACES) + " " + Findings.exact(z, PLACES);
    }
}
