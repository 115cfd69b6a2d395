package mouldwright.check;

import java.util.OptionalDouble;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Foam;
import mouldwright.process.FoamFigures;
import mouldwright.process.MixRatio;
import mouldwright.units.Dimension;

/** MW305: expansion times foam density is the density of the liquid; where it is not that of its components, one of the figures is wrong. */
final class FoamFiguresDisagree implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().fill().ifPresent(fill -> examine(fill, out));
    }

    private static void examine(Fill fill, Findings out) {
        Foam foam = fill.foam();
        if (foam.expansion().isEmpty())
            return;
        FoamFigures figures = FoamFigures.of(foam.expansion().get().likely(), foam.density().likely(), mixed(foam));
        String implied = Findings.figure(figures.impliedLiquidDensity(), Dimension.DENSITY);
        if (figures.disagree())
            out.warn("MW305", fill.origin(), foam.name() + ": expansion times density makes the liquid " + implied + ", its components make it "
                    + Findings.figure(mixed(foam).getAsDouble(), Dimension.DENSITY) + "; 10 % apart at most", "look at the data sheet: mass is reckoned from the density");
        else if (figures.implausible())
            out.warn("MW305", fill.origin(), foam.name() + ": expansion times density makes the liquid " + implied + ", 1.0 to 1.25 kg/l expected",
                    "look at the data sheet: mass is reckoned from the density");
    }

    private static OptionalDouble mixed(Foam foam) {
        if (foam.ratio().isEmpty() || foam.partA().isEmpty() || foam.partB().isEmpty())
            return OptionalDouble.empty();
        Foam.Ratio ratio = foam.ratio().get();
        double a = foam.partA().get().likely();
        double b = foam.partB().get().likely();
        return OptionalDouble.of(new MixRatio(ratio.a(), ratio.b(), ratio.byVolume() ? MixRatio.Basis.VOLUME : MixRatio.Basis.WEIGHT).mixedDensity(new MixRatio.Densities(a, b)));
    }
}
