package mouldwright.plan.stage;

import static mouldwright.units.Dimension.TIME;

import java.util.List;
import mouldwright.plan.Hazard;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.FairDefaults;

/** What is to be done to fair the foam: what surveys found is mended and measured again, then all is faired. */
final class FairTasks {

    private final FillerFacts filler;
    private final Ledger ledger;
    private final TaskBook tasks;

    FairTasks(FillerFacts filler, Ledger ledger, TaskBook tasks) {
        this.filler = filler;
        this.ledger = ledger;
        this.tasks = tasks;
    }

    void write(FairMeasures found) {
        found.places().forEach(this::place);
        ledger.find("fair.labour").ifPresent(labour -> tasks.addNext(Task.of("fair.fair", "Fair the foam with the board", labour)
                .persons(CarveStage.MOST_AT_WORK).cautions(Hazard.DUST)));
    }

    private void place(FairMeasures.Place place) {
        if (place.open()) {
            Task mend = Task.of("fair.mend." + place.number(), "Mend: " + place.words(), ledger.given(FairDefaults.mendLabour())).cautions(Hazard.STYRENE, Hazard.PEROXIDE, Hazard.DUST);
            tasks.addNext(place.remedy() instanceof FairMeasures.Filler(int layers) ? mend.wait(hard(layers)) : mend);
        }
        if (place.toMeasure())
            tasks.addNext(Task.of("fair.measure." + place.number(), "Measure again: " + place.words(), ledger.given(FairDefaults.remeasureLabour())));
    }

    private Node hard(int layers) {
        return ledger.step("until filler may be sanded", TIME).from(layers + " layers x time until hard", List.of(ledger.given(filler.hard())), v -> layers * v[0])
                .source("each layer hardens before the next");
    }
}
