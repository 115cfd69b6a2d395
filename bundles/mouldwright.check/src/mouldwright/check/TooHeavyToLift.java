package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.Quantity;
import mouldwright.units.Dimension;

/** MW806: a plug heavier than the crew should lift. The guideline is no limit and no permission. */
final class TooHeavyToLift implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        double crew = plan.spec().shop().persons().likely();
        plan.quantity("mass.plug.people").map(Quantity::value).filter(people -> people > crew).ifPresent(people ->
                plan.quantity("mass.plug").ifPresent(mass -> out.add(new Finding("MW806", Severity.INFO, plan.spec().origin(),
                        "a plug of " + Findings.figure(mass.value(), Dimension.MASS) + " takes " + Math.round(people) + " people or gear to lift, the crew is "
                                + Math.round(crew), "have a hoist or helpers there before it is turned; weigh it first"))));
    }
}
