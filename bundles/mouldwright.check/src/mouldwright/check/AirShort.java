package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.units.Dimension;

/** MW820: less fresh air than would thin the styrene of the worst session out to the limit. A figure for planning: local exhaust takes it away at
 *  the work, and local codes decide. */
final class AirShort implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().shop().air().supply().ifPresent(supply -> plan.quantity("air.flow").filter(flow -> flow.value() > supply.likely()).ifPresent(flow ->
                out.warn("MW820", supply.origin(), "the worst session asks for " + Findings.figure(flow.value(), Dimension.VOLUME_RATE) + " of fresh air, the shop has "
                        + Findings.figure(supply.likely(), Dimension.VOLUME_RATE),
                        "add exhaust at the work, lay fewer plies in a session or mix smaller pots; keep to local codes and wear breathing protection")));
    }
}
