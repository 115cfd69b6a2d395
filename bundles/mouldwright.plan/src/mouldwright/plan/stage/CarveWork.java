package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.TIME;

import java.util.List;
import mouldwright.plan.Hazard;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Rates;
import mouldwright.plan.spec.Spec;

/** Carving and fairing by rate over the moulded surface of the plug. */
final class CarveWork {

    private CarveWork() { }

    static void tasks(Spec spec, Ledger ledger, TaskBook tasks) {
        ledger.find("shape.area.moulded").ifPresent(part -> {
            Node area = ledger.step("moulded surface of the plug", AREA).from("moulded surface / (1 - shrink)^2",
                    List.of(part, ledger.given(spec.body().shrink())), v -> v[0] / ((1 - v[1]) * (1 - v[1]))).source("areas grow as the square of the plug's scale");
            Given carve = spec.shop().rates().flatMap(Rates::carve).orElseGet(Defaults::carveRate);
            Given fair = spec.shop().rates().flatMap(Rates::fair).orElseGet(Defaults::fairRate);
            tasks.turnTo("carve");
            tasks.add(Task.of("carve.carve", "Carve the foam to the plates", labour("carving", area, carve, ledger)).persons(4).cautions(Hazard.DUST));
            tasks.addNext(Task.of("carve.fair", "Fair the foam with the board", labour("fairing", area, fair, ledger)).persons(4).cautions(Hazard.DUST));
        });
    }

    private static Node labour(String words, Node area, Given rate, Ledger ledger) {
        return ledger.step("labour of " + words, TIME).from("surface / rate", List.of(area, ledger.given(rate)), v -> v[0] / v[1]).source("by rate");
    }
}
