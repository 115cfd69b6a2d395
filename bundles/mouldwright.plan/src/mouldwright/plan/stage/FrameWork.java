package mouldwright.plan.stage;

import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TIME;

import java.util.List;
import mouldwright.plan.Hazard;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Rates;
import mouldwright.plan.spec.ShopDefaults;
import mouldwright.plan.spec.Spec;

/** What is to be done for the bulkheads. */
final class FrameWork {

    private FrameWork() { }

    static void tasks(Spec spec, FrameMeasures made, Ledger ledger, TaskBook tasks) {
        if (made.plates().isEmpty())
            return;
        Node plates = ledger.measured("bulkheads", RATIO, Places.exact(made.plates().size(), "counted"));
        Node each = ledger.given(spec.shop().rates().flatMap(Rates::plate).orElseGet(ShopDefaults::plateLabour));
        Node labour = ledger.step("labour of the bulkheads", TIME).from("bulkheads x labour of one", List.of(plates, each), v -> v[0] * v[1]).source("by rate");
        tasks.add(Task.of("frame.plates", "Mark out, cut and set up " + made.plates().size() + " bulkheads", labour).persons(2)
                .cautions(Hazard.DUST, Hazard.LIFTING));
    }
}
