package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.ShopDefaults;
import mouldwright.plan.spec.Stiffener;
import mouldwright.units.Dimension;

/** MW620: a stiffener laid on a laminate that has not cured shrinks with it and shows through the face of the mould. */
final class StiffenerBeforeCure implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().mould().ifPresent(mould -> {
            Given hard = mould.schedule().resin().hard().orElseGet(ShopDefaults::hard);
            for (Stiffener stiffener : mould.stiffeners())
                stiffener.cured().filter(cured -> cured.likely() < hard.likely()).ifPresent(cured -> out.warn("MW620", cured.origin(),
                        "stiffeners " + Findings.figure(cured.likely(), Dimension.TIME) + " after the last ply, " + mould.schedule().resin().name() + " is hard after "
                                + Findings.figure(hard.likely(), Dimension.TIME), "state `after` and at least that time"));
        });
    }
}
