package mouldwright.plan.stage;

import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TIME;

import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Fill;
import mouldwright.process.Pour;

/** Times of the pours in their order, written in a ledger: what is poured, what is waited for, how often the plug is turned. */
final class PourTimes {

    private final Fill fill;
    private final PourOrder order;
    private final Ledger ledger;

    PourTimes(Fill fill, PourOrder order, Ledger ledger) {
        this.fill = fill;
        this.order = order;
        this.ledger = ledger;
    }

    void write() {
        Node firm = ledger.quantity("fill.firm", "Wait until a pour is firm", TIME).same(ledger.given(FoamFacts.firm(fill.foam())))
                .source("the foam's sheet, or a supplier's notes; a neighbour is opened and the plug turned no sooner");
        List<Node> waits = new ArrayList<>();
        for (PourOrder.Step step : order.steps())
            if (step instanceof PourOrder.Wait wait)
                waits.add(wait.firm() ? firm : longest(wait.bays().stream().map(bay -> cooling(bay, ledger)).toList()));
        ledger.quantity("fill.waiting", "Waits between pours, one after the other", TIME)
                .sum("for each wait in the order of pouring, the longest of the bays waited for", waits)
                .source("lifts cool before the next; a neighbour is opened and the plug turned when foam is firm");
        Node rise = ledger.given(FoamFacts.rise(fill.foam()));
        ledger.quantity("fill.pouring", "Mixing and pouring, one mixer", TIME)
                .from("pots x (mixing time + rise time)", List.of(ledger.find("fill.pots").orElseThrow(), rise),
                        v -> v[0] * (Pour.MIXING_TIME + v[1]))
                .source("one mixer pours one pot per rise; mixing 20 s as a data sheet has it");
        ledger.quantity("fill.turns", "Turnings of the plug", RATIO)
                .measured(Places.exact(order.turns(), "changes of attitude in the order of pouring, back upright at the end"));
    }

    /** The wait after a lift of a bay. */
    static Node cooling(String bay, Ledger ledger) {
        return ledger.find("bay." + bay + ".wait").orElseThrow();
    }

    private Node longest(List<Node> waits) {
        return waits.size() == 1 ? waits.getFirst() : ledger.step("longest wait", TIME).from("longest of the bays waited for", waits, v -> {
            double longest = 0;
            for (double wait : v)
                longest = Math.max(longest, wait);
            return longest;
        }).source("bays that are open together take their lifts in turn");
    }
}
