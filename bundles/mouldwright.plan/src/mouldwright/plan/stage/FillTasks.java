package mouldwright.plan.stage;

import static mouldwright.units.Dimension.TIME;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import mouldwright.plan.Hazard;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.FillDefaults;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Rates;
import mouldwright.plan.spec.ShopDefaults;
import mouldwright.plan.spec.Spec;
import mouldwright.process.Pour;

/** What is to be done for the foam, in the order of pouring: shuttering, the trial cup, lifts that wait for the ones below them, turnings, and the cure before
 *  carving. Bays of a later round wait until all of the round before are firm. */
final class FillTasks {

    private static final int POURING = 2;
    private static final int TURNING = 4;

    private final Fill fill;
    private final Ledger ledger;
    private final TaskBook tasks;
    private final Node firm;
    private final Given pot;
    private final Map<String, String> below = new HashMap<>();
    private List<String> before = new ArrayList<>();
    private List<String> round = new ArrayList<>();
    private int turns;

    FillTasks(Spec spec, Ledger ledger, TaskBook tasks) {
        this.fill = spec.fill().orElseThrow();
        this.pot = spec.shop().rates().flatMap(Rates::pot).orElseGet(ShopDefaults::potLabour);
        this.ledger = ledger;
        this.tasks = tasks;
        this.firm = ledger.find("fill.firm").orElseThrow();
    }

    void write(PourOrder order) {
        Node forms = ledger.step("labour of shuttering", TIME)
                .from("shuttering / shuttering rate", List.of(ledger.find("fill.forms.area").orElseThrow(), ledger.given(FillDefaults.formRate())), v -> v[0] / v[1])
                .source("by rate; film, stand-offs and packing with it");
        before.add(tasks.add(Task.of("fill.forms", "Set shuttering, film and packing", forms).persons(TURNING)));
        for (PourOrder.Step step : order.steps())
            switch (step) {
                case PourOrder.Trial() -> trial();
                case PourOrder.Turn(Fill.Attitude to) -> turn(to);
                case PourOrder.Pour pour -> pour(pour);
                case PourOrder.Wait(List<String> bays, boolean last) -> {
                    if (last)
                        close();
                }
            }
        cure();
    }

    private void trial() {
        Node labour = ledger.given(pot);
        before.add(tasks.add(Task.of("fill.trial", "Pour a trial cup of 200 g: see cream and rise", labour).inOneGo().wait(ledger.given(FoamFacts.rise(fill.foam())))
                .cautions(Hazard.ISOCYANATE, Hazard.EXOTHERM)));
    }

    private void turn(Fill.Attitude to) {
        turns++;
        String id = tasks.add(Task.of("fill.turn." + turns, "Turn the plug " + to.words(), ledger.given(FillDefaults.turnLabour())).persons(TURNING).inOneGo()
                .after(before).cautions(Hazard.LIFTING));
        before = new ArrayList<>(List.of(id));
    }

    private void pour(PourOrder.Pour pour) {
        boolean last = pour.lift() == pour.lifts();
        Node pots = ledger.find("bay." + pour.name() + ".lift." + pour.lift() + ".pots").orElseThrow();
        Task task = Task.of("fill.pour." + pour.name() + "." + pour.lift(), "Pour bay " + pour.name() + ", lift " + pour.lift() + " of " + pour.lifts(), labour(pots))
                .persons(POURING).inOneGo().wait(last ? firm : PourTimes.cooling(pour.name(), ledger))
                .after(pour.lift() == 1 ? before : List.of(below.get(pour.name()))).cautions(Hazard.ISOCYANATE, Hazard.EXOTHERM);
        below.put(pour.name(), tasks.add(task));
        if (last)
            round.add(task.id());
    }

    private Node labour(Node pots) {
        return ledger.step("labour of a pour", TIME)
                .from("pots x greater of labour of a pot and mixing time + rise time", List.of(pots, ledger.given(pot),
                        ledger.given(FoamFacts.rise(fill.foam()))), v -> v[0] * Math.max(v[1], Pour.MIXING_TIME + v[2]))
                .source("by rate; one mixer pours one pot per rise");
    }

    /** What comes next waits for all bays of a round. */
    private void close() {
        before = round;
        round = new ArrayList<>();
    }

    private void cure() {
        Node none = ledger.measured("no labour", TIME, Places.exact(0, "only time passes"));
        tasks.add(Task.of("fill.cure", "Leave the foam until it may be carved", none).wait(ledger.given(FoamFacts.carve(fill.foam()))).after(before)
                .cautions(Hazard.EXOTHERM));
    }
}
