package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Schedule;
import mouldwright.units.Dimension;

/** MW508: a heavy mat next to a gel coat bridges corners, holds air and prints through; 450 g/m2 is the heaviest (class rule text on production
 *  procedures and workmanship). */
final class HeavyMatOnGelCoat implements Check {

    private static final double HEAVIEST = 0.450;
    /** Mat sold as 1.5 oz/ft2 is the same grade and weighs 457.7 g/m2. */
    private static final double SAME_GRADE = 0.458;

    @Override public void examine(BuildPlan plan, Findings out) {
        for (Schedule schedule : Laminates.of(plan.spec())) {
            boolean coated = false;
            for (Schedule.Layer layer : schedule.layers())
                if (layer instanceof Schedule.Layer.Coat)
                    coated = true;
                else if (layer instanceof Schedule.Layer.Ply ply) {
                    if (coated && ply.mat().areal().likely() > SAME_GRADE)
                        out.warn("MW508", ply.origin(), schedule.name() + ": " + ply.mat().name() + " of " + Findings.figure(ply.mat().areal().likely(), Dimension.AREAL_MASS)
                                + " lies first against a gel coat, " + Findings.figure(HEAVIEST, Dimension.AREAL_MASS) + " at most: it bridges corners and holds air",
                                "lay a lighter mat first");
                    coated = false;
                }
        }
    }
}
