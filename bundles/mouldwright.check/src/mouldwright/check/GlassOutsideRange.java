package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Mat;
import mouldwright.units.Dimension;

/** MW510: a share of glass that no hand lay-up reaches. Chopped strand mat holds 25 to 35 % (2:1 to 3:1 of resin; published guides and a class test laminate),
 *  woven cloth 40 to 60 % (1.25:1 published; the rest from memory). The language does not tell the kinds apart, so only what neither holds is found. */
final class GlassOutsideRange implements Check {

    private static final double MAT_LEAST = 0.25;
    private static final double MAT_MOST = 0.35;
    private static final double WOVEN_LEAST = 0.40;
    private static final double WOVEN_MOST = 0.60;
    /** A stated percentage against a decimal bound. */
    private static final double ROUNDING = 1e-9;

    @Override public void examine(BuildPlan plan, Findings out) {
        for (Mat mat : Laminates.mats(plan.spec())) {
            double glass = mat.glass().likely();
            if (!within(glass, MAT_LEAST, MAT_MOST) && !within(glass, WOVEN_LEAST, WOVEN_MOST))
                out.warn("MW510", mat.glass().assumed() ? mat.stock().origin() : mat.glass().origin(), "glass of " + Findings.figure(glass, Dimension.RATIO) + " in " + mat.name()
                        + ", chopped strand mat holds " + range(MAT_LEAST, MAT_MOST) + " and woven cloth " + range(WOVEN_LEAST, WOVEN_MOST), "correct the share of glass");
        }
    }

    private static boolean within(double glass, double least, double most) {
        return glass > least - ROUNDING && glass < most + ROUNDING;
    }

    private static String range(double least, double most) {
        return Findings.figure(least, Dimension.RATIO) + " to " + Findings.figure(most, Dimension.RATIO);
    }
}
