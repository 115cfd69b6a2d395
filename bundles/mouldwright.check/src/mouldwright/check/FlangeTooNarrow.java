package mouldwright.check;

import mouldwright.plan.BuildPlan;

/** MW705: a narrow flange gives the bolts no room and bends open. 50 to 150 mm are common (from memory). */
final class FlangeTooNarrow implements Check {

    private static final double LEAST = 0.050;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().mould().filter(mould -> mould.flange().likely() < LEAST).ifPresent(mould -> out.warn("MW705", MouldPlaces.of(plan, mould.flange().origin()),
                "flange of " + Findings.length(mould.flange().likely()) + ", " + Findings.length(LEAST) + " at least: bolts and dowels find no room", "state `flange 75 mm`"));
    }
}
