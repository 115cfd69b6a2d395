package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.TIME;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import mouldwright.plan.Hazard;
import mouldwright.plan.Measurements;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Finish;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Rates;
import mouldwright.plan.spec.Spec;

/** The surface: surfacer by the litre, its films, and the hours of sanding. */
final class FinishStage implements Stage {

    @Override public String name() {
        return "finish";
    }

    @Override public boolean wantedBy(Spec spec) {
        return spec.finish().isPresent();
    }

    @Override public void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled) {
        Finish finish = spec.finish().orElseThrow();
        Guard guard = new Guard(measurements);
        CoatFacts.guard(finish.coats(), guard);
        finish.grits().forEach(grit -> guard.positive(rate(spec, grit)));
        CoatFacts.outsideGuide(finish.coats(), spec.shop().temperature(), measurements);
        if (guard.clear())
            measurements.find(ShapeMeasures.class).ifPresent(shape -> measurements.keep(new FinishMeasures(shape.mouldedPlugArea())));
    }

    @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) {
        if (measurements.find(FinishMeasures.class).isEmpty())
            return;
        Finish finish = spec.finish().orElseThrow();
        Node area = ledger.quantity("finish.area", "Finish, moulded surface of the plug", AREA).same(plugArea(spec, ledger))
                .source("areas grow as the square of the plug's scale");
        new CoatWriting(ledger, "finish", "Finish", area, spec.shop().temperature()).write(finish.coats());
        CoatWriting.wait(ledger, "finish.wait", "Finish, waits between coats", finish.coats());
        List<Node> hours = new ArrayList<>();
        for (int grit : finish.grits())
            hours.add(ledger.step("sanding with " + grit, TIME).from("area / rate", List.of(area, ledger.given(rate(spec, grit))),
                    v -> v[0] / v[1]).source("rates of the shop"));
        Ledger.Entry entry = ledger.quantity("finish.hours", "Finish, sanding, person-hours", TIME);
        if (hours.isEmpty())
            entry.measured(Places.exact(0, "the finish states no grit"));
        else
            entry.sum("sum over the grits", hours).source("sum");
    }

    @Override public void tasks(Spec spec, Measurements measurements, Ledger ledger, TaskBook tasks) {
        if (measurements.find(FinishMeasures.class).isEmpty())
            return;
        Finish finish = spec.finish().orElseThrow();
        CoatWork.tasks("finish.coat.", finish.coats(), ledger.find("finish.area").orElseThrow(), ledger, tasks);
        if (!finish.grits().isEmpty())
            tasks.addNext(Task.of("finish.sand", "Sand through the grits, " + finish.grits().getFirst() + " to " + finish.grits().getLast(),
                    ledger.find("finish.hours").orElseThrow()).persons(4).cautions(Hazard.DUST));
    }

    @Override public void orders(Spec spec, Measurements measurements, Ledger ledger, OrderBook orders) {
        if (measurements.find(FinishMeasures.class).isPresent())
            CoatWork.orders("finish", spec.finish().orElseThrow().coats(), ledger, orders);
    }

    /** The moulded surface of the plug. */
    static Node plugArea(Spec spec, Ledger ledger) {
        return ledger.step("moulded surface of the plug", AREA).from("moulded surface / (1 - shrink)^2",
                List.of(ledger.find("shape.area.moulded").orElseThrow(), ledger.given(spec.body().shrink())), v -> v[0] / ((1 - v[1]) * (1 - v[1])))
                .source("areas grow as the square of the plug's scale");
    }

    /** How fast a grit is sanded with; the default where the shop states none. */
    private static Given rate(Spec spec, int grit) {
        return spec.shop().rates().stream().map(Rates::sand).flatMap(List::stream).filter(sanding -> sanding.grit() == grit)
                .map(Rates.Sanding::rate).findFirst().orElseGet(Defaults::sandRate);
    }
}
