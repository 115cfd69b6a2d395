package mouldwright.plan.stage;

import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.TIME;

import java.util.List;
import mouldwright.plan.Hazard;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Coating;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Finish;
import mouldwright.process.Air;

/** What is to be done to put coats on, and what they use up. */
final class CoatWork {

    private CoatWork() { }

    /** A task for each line of coats, one after the other, each with its waits.
     *  @param id    the ids of the tasks begin with this
     *  @param area  they go on */
    static void tasks(String id, List<Finish.Coats> coats, Node area, Ledger ledger, TaskBook tasks) {
        for (int i = 0; i < coats.size(); i++) {
            Finish.Coats one = coats.get(i);
            int count = one.count();
            Node labour = ledger.step("labour of coats", TIME).from(count + " x area / coating rate", List.of(area, ledger.given(Defaults.coatRate())),
                    v -> count * v[0] / v[1]).source("by rate");
            Task task = Task.of(id + (i + 1), "Put on " + CoatWriting.words(one), labour).persons(2);
            tasks.addNext(released(one.coating(), count, area, paused(one, task, ledger), ledger));
        }
    }

    private static Task paused(Finish.Coats coats, Task task, Ledger ledger) {
        return coats.coating().recoat().map(recoat -> task.wait(ledger.step("wait after coats", TIME)
                .from("coats x time to the next", List.of(ledger.given(recoat)), v -> coats.count() * v[0]).source("as the supplier states it"))).orElse(task);
    }

    /** A coating that states styrene and its density gives it off as gel coat does. */
    private static Task released(Coating coating, int count, Node area, Task task, Ledger ledger) {
        if (coating.styrene().isEmpty() || coating.density().isEmpty() || coating.coverage().isPresent())
            return coating.curing().isPresent() ? task.cautions(Hazard.PEROXIDE) : task;
        Node mass = ledger.step("coating put on", MASS).from(count + " x area x wet film x density / transfer",
                List.of(area, ledger.given(CoatFacts.wet(coating)), ledger.given(coating.density().get()), ledger.given(CoatFacts.transfer(coating))),
                v -> count * v[0] * v[1] * v[2] / v[3]).source("closed form");
        return task.cautions(Hazard.STYRENE, Hazard.PEROXIDE).releases(Air.Application.GEL_COAT, mass, ledger.given(coating.styrene().get()));
    }

    /** Orders each coating by the volume, or by the weight where no volume is known.
     *  @param id as {@link CoatWriting} has it */
    static void orders(String id, List<Finish.Coats> coats, Ledger ledger, OrderBook orders) {
        coats.stream().map(Finish.Coats::coating).map(Coating::name).distinct().forEach(name -> {
            Coating coating = coats.stream().map(Finish.Coats::coating).filter(one -> one.name().equals(name)).findFirst().orElseThrow();
            ledger.find(id + "." + name + ".volume").or(() -> ledger.find(id + "." + name + ".mass")).ifPresent(amount -> orders.need(coating, amount));
            coating.curing().ifPresent(curing -> ledger.find(id + "." + name + ".catalyst.mass").ifPresent(mass -> orders.need(curing.hardener(), mass)));
        });
    }
}
