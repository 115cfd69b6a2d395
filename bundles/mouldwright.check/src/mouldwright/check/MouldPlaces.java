package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Origin;

/** Where in the text a finding about the mould belongs. */
final class MouldPlaces {

    private MouldPlaces() { }

    /** The place itself, or the mould's block for something the spec does not state. */
    static Origin of(BuildPlan plan, Origin origin) {
        return origin instanceof Origin.Assumed ? plan.spec().mould().map(Mould::origin).orElse(plan.spec().origin()) : origin;
    }
}
