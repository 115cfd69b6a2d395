package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import mouldwright.plan.Assumption;
import mouldwright.plan.Measurements;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Spec;
import mouldwright.units.Dimension;

/** What the job costs: whole packs and the crew's wage, by material, by stage and in all. A pack that several stages use is charged to
 *  each by its share of the need, so that the stages add up to the whole. */
final class CostStage implements Stage {

    private static final double SECONDS_PER_HOUR = 3600;

    @Override public String name() {
        return "cost";
    }

    @Override public boolean wantedBy(Spec spec) {
        return ProgrammeStage.isBuilt(spec);
    }

    @Override public void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled) { }

    @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) { }

    @Override public void conclude(Spec spec, Measurements measurements, TaskBook tasks, OrderBook orders, Ledger ledger) {
        String currency = measurements.find(OrderLines.class).map(OrderLines::currency).orElse(spec.shop().currency());
        Map<String, List<Node>> stages = new LinkedHashMap<>();
        List<Node> materials = new ArrayList<>();
        measurements.find(OrderLines.class).ifPresent(order -> order.lines().forEach(line ->
                line.bought().filter(OrderLines.Bought::priced).ifPresent(bought -> materials.add(material(line, bought, currency, stages, ledger)))));
        Optional<Node> labour = labour(spec, measurements, tasks, currency, stages, ledger);
        List<Node> parts = new ArrayList<>();
        if (!materials.isEmpty())
            parts.add(ledger.money("cost.materials", "Materials, whole packs", currency).sum("sum over the materials", materials).source("sum"));
        labour.ifPresent(parts::add);
        if (parts.isEmpty())
            return;
        stages.forEach((stage, nodes) -> ledger.money("cost.stage." + stage, "Cost of " + stage, currency)
                .sum("its share of packs + its labour", nodes).source("a pack is shared among stages as they need it"));
        ledger.money("plan.cost", "Cost", currency).sum("materials + labour", parts).source("sum; without room, power, tools and waste disposal");
    }

    private static Node material(OrderLines.Line line, OrderLines.Bought bought, String currency, Map<String, List<Node>> stages, Ledger ledger) {
        Node price = ledger.given(Given.of("price of a pack of " + line.name(), Dimension.RATIO, bought.pack().price(), bought.pack().size().origin()));
        Node cost = ledger.money("cost.material." + line.key(), "Cost of " + line.name(), currency)
                .from("packs x price", List.of(bought.packs(), price), v -> v[0] * v[1]).source("price as the library states it");
        line.stages().forEach((stage, need) -> stages.computeIfAbsent(stage, name -> new ArrayList<>()).add(
                ledger.step(line.name() + " for " + stage, Dimension.RATIO).from("cost x need of the stage / need", List.of(cost, need, line.need()),
                        v -> v[2] > 0 ? v[0] * v[1] / v[2] : 0).source("shared as needed")));
        return cost;
    }

    private static Optional<Node> labour(Spec spec, Measurements measurements, TaskBook tasks, String currency, Map<String, List<Node>> stages, Ledger ledger) {
        if (tasks.entries().isEmpty())
            return Optional.empty();
        if (spec.shop().hourlyRate().isEmpty()) {
            measurements.assume(Assumption.choice("wage", "none", new Origin.Assumed("the spec states no wage, so labour is left out of the cost")));
            return Optional.empty();
        }
        Given rate = spec.shop().hourlyRate().get();
        if (!new Guard(measurements).notNegative(rate).clear())
            return Optional.empty();
        Node wage = ledger.given(rate);
        tasks.entries().stream().map(TaskBook.Entry::stage).distinct().forEach(stage -> ledger.find("plan.labour." + stage).ifPresent(time ->
                stages.computeIfAbsent(stage, name -> new ArrayList<>()).add(ledger.step("labour of " + stage, Dimension.RATIO)
                        .from("labour in hours x wage", List.of(time, wage), v -> v[0] / SECONDS_PER_HOUR * v[1]).source("closed form"))));
        return ledger.find("plan.labour").map(time -> ledger.money("cost.labour", "Labour", currency)
                .from("labour in hours x wage", List.of(time, wage), v -> v[0] / SECONDS_PER_HOUR * v[1]).source("wage as the spec states it"));
    }
}
