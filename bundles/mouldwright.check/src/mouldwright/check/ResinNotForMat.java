package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Schedule;
import mouldwright.units.Dimension;

/** MW514: the binder of chopped strand mat dissolves in styrene; in a resin without any, such as epoxy, the mat stays stiff and white. Common practice. A resin is taken for one
 *  without styrene where it states none and takes more hardener than any peroxide is dosed at; a mat for chopped strand by its share of glass. */
final class ResinNotForMat implements Check {

    /** Peroxide is dosed at 1 to 4 %; epoxies take a quarter of their weight of hardener and more. */
    private static final double MOST_PEROXIDE = 0.10;
    /** Chopped strand mat holds no more glass than this; see {@link GlassOutsideRange}. */
    private static final double STRAND_MOST = 0.35;

    @Override public void examine(BuildPlan plan, Findings out) {
        for (Schedule schedule : Laminates.of(plan.spec()))
            if (withoutStyrene(schedule.resin()))
                schedule.plies().stream().filter(ply -> strand(ply.mat())).findFirst().ifPresent(ply -> out.warn("MW514", ply.origin(), schedule.name() + ": " + ply.mat().name()
                        + " holds " + Findings.figure(ply.mat().glass().likely(), Dimension.RATIO) + " of glass, as chopped strand mat does, and " + schedule.resin().name()
                        + " takes " + Findings.figure(schedule.resin().mostCatalyst().orElseThrow().likely(), Dimension.RATIO)
                        + " of hardener and has no styrene: the binder of the mat does not dissolve", "lay woven cloth or stitched mat, or state the `styrene` of the resin"));
    }

    private static boolean withoutStyrene(Resin resin) {
        return resin.styrene().map(Given::likely).orElse(0.0) == 0 && resin.mostCatalyst().filter(most -> most.likely() > MOST_PEROXIDE).isPresent();
    }

    private static boolean strand(Mat mat) {
        return mat.glass().likely() <= STRAND_MOST;
    }
}
