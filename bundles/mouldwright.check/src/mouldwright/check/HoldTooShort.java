package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.units.Dimension;

/** MW708: a mould taken off green goes on shrinking and twists. Up to three weeks on the plug are advised (Practical Action; Practical Boat Owner); a
 *  week is the least. */
final class HoldTooShort implements Check {

    private static final double WEEK = 7 * 86400.0;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().mould().filter(mould -> mould.hold().likely() < WEEK).ifPresent(mould -> out.warn("MW708", MouldPlaces.of(plan, mould.hold().origin()),
                "released after " + Findings.figure(mould.hold().likely(), Dimension.TIME) + ", " + Findings.figure(WEEK, Dimension.TIME)
                        + " at least: a green mould twists", "state `hold 14 d`",
                Fix.stating(mould.hold(), mould.origin(), "hold", "14 d", "")));
    }
}
