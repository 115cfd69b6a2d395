package mouldwright.plan.stage;

import static mouldwright.units.Dimension.TIME;

import java.util.List;
import mouldwright.plan.Hazard;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Rates;
import mouldwright.plan.spec.Spec;

/** What is to be done for the foam: every lift is a pour, and waits for the one below it. */
final class FillWork {

    private FillWork() { }

    static void tasks(Spec spec, FillMeasures fill, Ledger ledger, TaskBook tasks) {
        Fill stated = spec.fill().orElseThrow();
        Node each = ledger.given(spec.shop().rates().flatMap(Rates::pot).orElseGet(Defaults::potLabour));
        Node firm = ledger.given(stated.foam().firm().orElseGet(Defaults::firm));
        Node carve = ledger.given(stated.foam().carve().orElseGet(Defaults::carveAfter));
        Node last = ledger.step("wait until it may be carved", TIME).from("larger of firm time and time until carving", List.of(firm, carve),
                v -> Math.max(v[0], v[1])).source("the supplier's data sheet");
        for (FillMeasures.BayFill bay : fill.bays())
            for (int i = 0; i < bay.lifts().size(); i++) {
                String id = FillStage.liftId(bay, i);
                Node pots = ledger.find(id + ".pots").orElseThrow();
                Node labour = ledger.step("labour of a pour", TIME).from("pots x labour of a pot", List.of(pots, each), v -> v[0] * v[1]).source("by rate");
                Task task = Task.of(taskId(bay, i), "Pour " + bay.bay().words() + ", lift " + (i + 1), labour).persons(2).inOneGo()
                        .wait(i + 1 < bay.lifts().size() ? firm : last).cautions(Hazard.ISOCYANATE, Hazard.EXOTHERM);
                tasks.add(i == 0 ? task : task.after(taskId(bay, i - 1)));
            }
    }

    private static String taskId(FillMeasures.BayFill bay, int i) {
        return "fill.pour." + bay.bay().name() + "." + (i + 1);
    }
}
