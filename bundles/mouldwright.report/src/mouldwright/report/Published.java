package mouldwright.report;

import mouldwright.units.Dimension;

/** The units files carry figures in: SI, but minutes for times. */
final class Published {

    private static final double SECONDS_PER_MINUTE = 60;

    private Published() { }

    /** UCUM code of the unit. */
    static String unit(Dimension dimension) {
        return dimension.equals(Dimension.TIME) ? "min" : dimension.ucum();
    }

    /** An SI figure in that unit. */
    static double value(double si, Dimension dimension) {
        return dimension.equals(Dimension.TIME) ? minutes(si) : si;
    }

    /** Seconds in minutes. */
    static double minutes(double seconds) {
        return seconds / SECONDS_PER_MINUTE;
    }
}
