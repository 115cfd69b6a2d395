package mouldwright.plan.stage;

import static mouldwright.units.Dimension.RATIO;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import mouldwright.plan.Measurements;
import mouldwright.plan.OrderEntry;
import mouldwright.plan.PlanFault;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.spec.Consumable;
import mouldwright.plan.spec.Hardener;
import mouldwright.plan.spec.Material;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.ShopDefaults;
import mouldwright.plan.spec.Spec;
import mouldwright.units.Dimension;

/** The order list: needs summed per material over the whole job, and only then rounded up to whole packs, once. */
final class OrderStage implements Stage {

    @Override public String name() {
        return "orders";
    }

    @Override public boolean wantedBy(Spec spec) {
        return ProgrammeStage.isBuilt(spec);
    }

    @Override public void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled) { }

    @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) { }

    @Override public void conclude(Spec spec, Measurements measurements, TaskBook tasks, OrderBook orders, Ledger ledger) {
        List<OrderBook.Need> needs = new ArrayList<>(orders.needs());
        Guard guard = new Guard(measurements);
        Set<Consumable> used = new java.util.LinkedHashSet<>(spec.shop().consumables());
        for (Consumable consumable : used)
            if (clear(consumable, guard))
                Consuming.need(consumable, orders, measurements, ledger).ifPresent(node ->
                        needs.add(new OrderBook.Need("consumables", consumable.name(), Optional.of(consumable), node)));
        if (needs.isEmpty())
            return;
        String currency = currency(spec, needs);
        Map<Object, List<OrderBook.Need>> byMaterial = new LinkedHashMap<>();
        for (OrderBook.Need need : needs)
            byMaterial.computeIfAbsent(need.material().<Object>map(m -> m).orElse(need.name()), key -> new ArrayList<>()).add(need);
        List<OrderLines.Line> lines = new ArrayList<>();
        Set<String> keys = new TreeSet<>();
        for (List<OrderBook.Need> all : byMaterial.values())
            lines.add(new Writing(spec, measurements, ledger, currency).line(key(all.getFirst().name(), keys), all));
        measurements.keep(new OrderLines(lines, currency));
    }

    private static boolean clear(Consumable consumable, Guard guard) {
        return guard.positive(consumable.area()).positive(consumable.labour()).positive(consumable.pours()).positive(consumable.pots()).clear();
    }

    private static String key(String name, Set<String> taken) {
        String plain = name.strip().replaceAll("\\s+", "-");
        String key = plain;
        for (int n = 2; !taken.add(key); n++)
            key = plain + "-" + n;
        return key;
    }

    /** That of the plug, else the first a library states. */
    private static String currency(Spec spec, List<OrderBook.Need> needs) {
        if (!spec.shop().currency().isEmpty())
            return spec.shop().currency();
        return needs.stream().flatMap(need -> need.material().stream()).flatMap(material -> material.stock().pack().stream())
                .map(Material.Pack::currency).filter(currency -> !currency.isEmpty()).findFirst().orElse("");
    }

    /** Writes the figures of a line. */
    private record Writing(Spec spec, Measurements measurements, Ledger ledger, String currency) {

        OrderLines.Line line(String key, List<OrderBook.Need> needs) {
            Optional<Material> material = needs.getFirst().material();
            String name = needs.getFirst().name();
            Dimension measure = PackMeasure.of(material, needs.getFirst().amount());
            Map<String, List<Node>> stages = new LinkedHashMap<>();
            for (OrderBook.Need need : needs)
                PackMeasure.in(ledger, measure, material, need.amount()).map(node -> withWaste(material, node)).ifPresentOrElse(
                        node -> stages.computeIfAbsent(need.stage(), stage -> new ArrayList<>()).add(node), () -> otherMeasure(need, measure));
            Map<String, Node> sums = new LinkedHashMap<>();
            stages.forEach((stage, nodes) -> sums.put(stage, nodes.size() == 1 ? nodes.getFirst()
                    : ledger.step(name + " for " + stage, measure).sum("sum over the needs of the stage", nodes).source("sum")));
            Node need = ledger.quantity("order." + key + ".need", name + ", needed", measure).sum("sum over the stages", List.copyOf(sums.values()))
                    .source("summed over the whole job before packs are counted");
            return new OrderLines.Line(key, name, material, sums, need, material.flatMap(m -> m.stock().pack()).flatMap(pack -> bought(key, name, pack, need)));
        }

        /** Resin and its hardener stay in pots, on rollers and brushes. */
        private Node withWaste(Optional<Material> material, Node need) {
            if (material.isEmpty() || !(material.get() instanceof Resin || material.get() instanceof Hardener))
                return need;
            return ledger.step(need.label() + ", with waste", need.dimension()).from("need x (1 + waste)",
                    List.of(need, ledger.given(ShopDefaults.resinWaste())), v -> v[0] * (1 + v[1])).source("waste over what ends in the laminate");
        }

        private Optional<OrderLines.Bought> bought(String key, String name, Material.Pack pack, Node need) {
            Measurements own = new Measurements();
            boolean clear = new Guard(own).positive(pack.size()).clear();
            own.faults().forEach(measurements::report);
            if (!clear)
                return Optional.empty();
            boolean priced = pack.currency().isEmpty() || currency.isEmpty() || pack.currency().equals(currency);
            if (!priced)
                measurements.report(PlanFault.of(PlanFault.Kind.OTHER_CURRENCY, spec.origin(), "material " + name,
                        name + " is priced in " + pack.currency() + ", the job in " + currency + ": it is left out of the cost",
                        "state its price in " + currency));
            Node size = ledger.given(pack.size());
            Node packs = ledger.quantity("order." + key + ".packs", name + ", packs", RATIO).from("need / pack", List.of(need, size), v -> v[0] / v[1])
                    .roundedUp().source("whole packs, counted once over the whole job");
            Node left = ledger.quantity("order." + key + ".left", name + ", left over", need.dimension())
                    .from("packs x pack - need", List.of(packs, size, need), v -> Math.max(0, v[0] * v[1] - v[2])).source("closed form");
            return Optional.of(new OrderLines.Bought(pack, packs, left, priced));
        }

        private void otherMeasure(OrderBook.Need need, Dimension measure) {
            measurements.report(PlanFault.of(PlanFault.Kind.PACK_MEASURE, need.material().map(m -> m.stock().origin()).orElse(spec.origin()),
                    "material " + need.name(), need.name() + " is used by " + need.amount().dimension().word() + " and sold by " + measure.word()
                            + ", with nothing to turn one into the other", "state its density"));
        }
    }

    @Override public void list(Spec spec, Measurements measurements, Reckoning reckoning, Lists lists) {
        measurements.find(OrderLines.class).ifPresent(order -> order.lines().forEach(line -> lists.order(new OrderEntry(line.name(),
                line.material().flatMap(material -> material.stock().title()), line.material().isPresent(), line.need().dimension(), reckoning.likely(line.need()),
                reckoning.low(line.need()), reckoning.high(line.need()), List.copyOf(line.stages().keySet()),
                line.bought().map(bought -> packing(bought, order.currency(), reckoning))))));
    }

    private static OrderEntry.Packing packing(OrderLines.Bought bought, String currency, Reckoning reckoning) {
        double packs = reckoning.likely(bought.packs());
        return new OrderEntry.Packing(bought.pack().size().likely(), (int) packs, (int) reckoning.low(bought.packs()),
                (int) reckoning.high(bought.packs()), reckoning.likely(bought.left()), bought.pack().price(),
                bought.priced() ? OptionalDouble.of(packs * bought.pack().price()) : OptionalDouble.empty(),
                bought.priced() ? currency : bought.pack().currency());
    }
}
