package mouldwright.drawing.subject;

import java.math.BigDecimal;

/**
 * How much smaller than the plug a drawing is.
 *
 * @param reduction metres of the plug to a metre of paper, positive
 */
record Scale(double reduction) {

    /** Those a scale rule has, and their halves; ISO 5455 recommends 1 : 2, 1 : 5 and 1 : 10 of each ten. */
    private static final double[] STEPS = {1, 1.25, 1.5, 2, 2.5, 4, 5, 7.5};
    private static final double MM = 1000;

    /** The largest common scale that fits.
     *  @param width  of what is drawn, metres
     *  @param height of what is drawn, metres
     *  @param across room, mm
     *  @param up     room, mm */
    static Scale fitting(double width, double height, double across, double up) {
        double least = Math.max(width * MM / across, height * MM / up);
        double ten = least > 0 && Double.isFinite(least) ? Math.pow(10, Math.floor(Math.log10(least))) : 1;
        for (double step : STEPS)
            if (step * ten >= least * (1 - 1e-9))
                return new Scale(step * ten);
        return new Scale(10 * ten);
    }

    /** On paper, mm. */
    double mm(double metres) {
        return metres * MM / reduction;
    }

    /** Such as "1 : 12.5", or "2 : 1" where the drawing is larger. */
    String words() {
        return reduction >= 1 ? "1 : " + plain(reduction) : plain(1 / reduction) + " : 1";
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(Math.round(value * 100)).movePointLeft(2).stripTrailingZeros().toPlainString();
    }
}
