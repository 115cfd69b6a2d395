package mouldwright.plan.stage;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import mouldwright.plan.Assumption;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.Quantity;
import mouldwright.plan.ledger.Ground;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.Tacit;

/** Plans a build: each stage measures, each stage writes its figures, and the ledger is reckoned. */
public final class Planner {

    private final List<Stage> stages;

    /** A planner with all stages. */
    public Planner() {
        this(Stages.all());
    }

    /** A planner with some stages, in the order of the build. */
    public Planner(List<Stage> stages) {
        this.stages = List.copyOf(stages);
    }

    /** Plans.
     *  @param cancelled asked often
     *  @return the plan, with the faults met; never null
     *  @throws java.util.concurrent.CancellationException when cancelled */
    public BuildPlan plan(Spec spec, BooleanSupplier cancelled) {
        List<Stage> wanted = stages.stream().filter(stage -> stage.wantedBy(spec)).toList();
        Measurements measurements = new Measurements();
        Ledger ledger = new Ledger(new Grounds(spec).plug());
        for (Stage stage : wanted)
            stage.measure(spec, measurements, cancelled);
        for (Stage stage : wanted) {
            ledger.turnTo(stage.name());
            stage.quantify(spec, measurements, ledger);
        }
        gather(wanted, spec, measurements, ledger);
        Reckoning reckoning;
        try {
            reckoning = ledger.close();
        } catch (ArithmeticException e) {
            return withoutFigures(spec, measurements, e.getMessage());
        }
        Lists lists = new Lists();
        for (Stage stage : wanted)
            stage.list(spec, measurements, reckoning, lists);
        return new BuildPlan(spec, assumed(spec, measurements, ledger), quantities(reckoning), lists.plates(), lists.pours(),
                lists.pots(), lists.pieces(), lists.tasks(), lists.orders(), measurements.faults(), measurements, reckoning);
    }

    /** What is left where figures are so far out that they cannot be reckoned with. */
    private static BuildPlan withoutFigures(Spec spec, Measurements measurements, String what) {
        measurements.report(PlanFault.of(PlanFault.Kind.FIGURE, spec.origin(), "plug " + spec.name(), what + ": it grows past any number",
                "look for a figure that is far from any workshop's"));
        return new BuildPlan(spec, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), measurements.faults(), measurements,
                new Ledger(new Grounds(spec).plug()).close());
    }

    private static void gather(List<Stage> wanted, Spec spec, Measurements measurements, Ledger ledger) {
        TaskBook tasks = new TaskBook();
        OrderBook orders = new OrderBook();
        for (Stage stage : wanted) {
            ledger.turnTo(stage.name());
            tasks.turnTo(stage.name());
            orders.turnTo(stage.name());
            stage.tasks(spec, measurements, ledger, tasks);
            stage.orders(spec, measurements, ledger, orders);
        }
        for (Stage stage : wanted) {
            ledger.turnTo(stage.name());
            stage.conclude(spec, measurements, tasks, orders, ledger);
        }
    }

    /** Every default the plan rests on: what the spec was read with, what the stages chose, and the figures that enter a formula or
     *  stand behind a measure. A stage that is not wanted writes none of these. */
    private static List<Assumption> assumed(Spec spec, Measurements measurements, Ledger ledger) {
        Set<Assumption> all = new LinkedHashSet<>();
        for (Tacit tacit : spec.tacit())
            all.add(switch (tacit) {
                case Tacit.Choice(String name, String words, Origin.Assumed why) -> Assumption.choice(name, words, why);
                case Tacit.Figure(Given given) -> Assumption.of(given);
            });
        all.addAll(measurements.assumptions());
        ledger.givens().stream().filter(Given::assumed).map(Assumption::of).forEach(all::add);
        ledger.grounds().stream().filter(Ground.Figure.class::isInstance).map(ground -> ((Ground.Figure) ground).given())
                .filter(Given::assumed).map(Assumption::of).forEach(all::add);
        return List.copyOf(all);
    }

    private static List<Quantity> quantities(Reckoning reckoning) {
        return reckoning.quantities().stream().map(node -> quantity(reckoning, node)).toList();
    }

    private static Quantity quantity(Reckoning reckoning, Node node) {
        return new Quantity(node.id(), node.stage(), node.label(), node.dimension(), reckoning.low(node),
                reckoning.likely(node), reckoning.high(node), node.currency());
    }
}
