package mouldwright.plan.stage;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.Quantity;
import mouldwright.plan.spec.Spec;

/** Shorthands of the tests. */
final class Plans {

    private Plans() { }

    static BuildPlan plan(Specs specs) {
        return plan(specs.build());
    }

    static BuildPlan plan(Spec spec) {
        return new Planner().plan(spec, () -> false);
    }

    static Quantity quantity(BuildPlan plan, String id) {
        return plan.quantity(id).orElseThrow(() -> new AssertionError("no " + id));
    }

    static double value(BuildPlan plan, String id) {
        return quantity(plan, id).value();
    }
}
