package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.Measurements;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Consumable;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Material;

/** How many of a consumable a job uses up: by mat laid, by labour, by pours of foam and by pots mixed. */
final class Consuming {

    private Consuming() { }

    /** Pieces needed, not rounded; empty where the job has nothing of what it is counted by. */
    static Optional<Node> need(Consumable consumable, OrderBook orders, Measurements measurements, Ledger ledger) {
        List<Node> parts = new ArrayList<>();
        part(consumable, "mat laid / area for one", consumable.area(), area(orders, ledger), ledger, parts);
        part(consumable, "labour / labour for one", consumable.labour(), ledger.find("plan.labour"), ledger, parts);
        part(consumable, "pours / pours for one", consumable.pours(), pours(measurements, ledger), ledger, parts);
        part(consumable, "pots / pots for one", consumable.pots(), pots(ledger), ledger, parts);
        return parts.isEmpty() ? Optional.empty()
                : Optional.of(ledger.step(consumable.name() + " used up", RATIO).sum("sum over what uses it up", parts).source("sum"));
    }

    private static void part(Consumable consumable, String words, Optional<Given> each, Optional<Node> basis, Ledger ledger, List<Node> parts) {
        if (each.isPresent() && basis.isPresent())
            parts.add(ledger.step(consumable.name() + " by use", RATIO).from(words, List.of(basis.get(), ledger.given(each.get())), v -> v[0] / v[1])
                    .source("as the library states it"));
    }

    /** Area of all mat off the roll. */
    private static Optional<Node> area(OrderBook orders, Ledger ledger) {
        List<Node> areas = new ArrayList<>();
        for (OrderBook.Need need : orders.needs())
            if (need.material().isPresent() && need.material().get() instanceof Mat mat)
                PackMeasure.in(ledger, MASS, Optional.<Material>of(mat), need.amount()).ifPresent(mass -> areas.add(
                        ledger.step("area of mat " + mat.name(), AREA).from("mass / areal mass", List.of(mass, ledger.given(mat.areal())), v -> v[0] / v[1])
                                .source("closed form")));
        return total("mat laid", AREA, areas, ledger);
    }

    private static Optional<Node> pours(Measurements measurements, Ledger ledger) {
        List<Node> lifts = new ArrayList<>();
        measurements.find(FillMeasures.class).ifPresent(fill -> fill.bays().forEach(bay -> ledger.find(bay.bay().id("lifts")).ifPresent(lifts::add)));
        return total("pours of foam", RATIO, lifts, ledger);
    }

    private static Optional<Node> pots(Ledger ledger) {
        List<Node> pots = new ArrayList<>();
        for (String id : List.of("fill.pots", "skin.pots", "mould.pots", StiffenerWriting.ID + ".pots"))
            ledger.find(id).ifPresent(pots::add);
        return total("pots mixed", RATIO, pots, ledger);
    }

    private static Optional<Node> total(String label, mouldwright.units.Dimension dimension, List<Node> nodes, Ledger ledger) {
        return nodes.isEmpty() ? Optional.empty() : Optional.of(ledger.step(label, dimension).sum("sum over the job", nodes).source("sum"));
    }
}
