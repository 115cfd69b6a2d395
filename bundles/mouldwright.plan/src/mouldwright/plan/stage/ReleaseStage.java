package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import mouldwright.plan.Measurements;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Finish;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Spec;

/** The release: wax and film over everything the mould is laid on, and the waits between coats. */
final class ReleaseStage implements Stage {

    @Override public String name() {
        return "release";
    }

    @Override public boolean wantedBy(Spec spec) {
        return spec.mould().filter(mould -> !mould.release().isEmpty()).isPresent();
    }

    @Override public void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled) {
        List<Finish.Coats> coats = spec.mould().orElseThrow().release();
        Guard guard = new Guard(measurements);
        CoatFacts.guard(coats, guard);
        if (guard.clear() && measurements.find(ShapeMeasures.class).isPresent())
            measurements.keep(new ReleaseMeasures(coats.stream().mapToInt(Finish.Coats::count).sum()));
    }

    @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) {
        if (measurements.find(ReleaseMeasures.class).isEmpty())
            return;
        Mould mould = spec.mould().orElseThrow();
        List<Node> faces = new ArrayList<>(List.of(FinishStage.plugArea(spec, ledger)));
        measurements.find(MouldMeasures.class).ifPresent(measured -> faces.addAll(new MouldEdging(spec, measured, ledger).faces()));
        Node area = ledger.quantity("release.area", "Release, plug and flanges", AREA)
                .sum("moulded surface of the plug + run-out + flanges", faces).source("whatever resin touches is released");
        new CoatWriting(ledger, "release", "Release", area, spec.shop().temperature()).write(mould.release());
        CoatWriting.wait(ledger, "release.wait", "Release, waits between coats", mould.release());
    }

    @Override public void tasks(Spec spec, Measurements measurements, Ledger ledger, TaskBook tasks) {
        ledger.find("release.area").ifPresent(area -> CoatWork.tasks("release.coat.", spec.mould().orElseThrow().release(), area, ledger, tasks));
    }

    @Override public void orders(Spec spec, Measurements measurements, Ledger ledger, OrderBook orders) {
        if (measurements.find(ReleaseMeasures.class).isPresent())
            CoatWork.orders("release", spec.mould().orElseThrow().release(), ledger, orders);
    }
}
