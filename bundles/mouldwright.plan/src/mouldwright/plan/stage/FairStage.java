package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TIME;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import mouldwright.plan.Assumption;
import mouldwright.plan.Measurements;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.FairDefaults;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.LaminateDefaults;
import mouldwright.plan.spec.Rates;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Spec;

/** Fairing the carved foam: what surveys found, what mends it, and the labour. */
final class FairStage implements Stage {

    @Override public String name() {
        return "fair";
    }

    @Override public boolean wantedBy(Spec spec) {
        return spec.carve().isPresent() || !spec.surveys().isEmpty();
    }

    @Override public void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled) {
        FillerFacts filler = FillerFacts.of(spec);
        Guard guard = new Guard(measurements).positive(rate(spec));
        spec.frame().ifPresent(frame -> guard.sizeOrNone(frame.tolerance()));
        if (filler.makeSense(guard))
            measurements.find(ShapeMeasures.class).ifPresent(shape -> {
                FairMeasures found = new FairMeasures(new Surveying(spec, shape, filler, measurements).places(), new PlateErrors(spec, shape).find());
                measurements.keep(found);
                if (!found.places().isEmpty())
                    Stream.of(filler.extraPlies(), filler.layer(), filler.total()).filter(Given::assumed).map(Assumption::of).forEach(measurements::assume);
            });
    }

    @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) {
        measurements.find(FairMeasures.class).ifPresent(found -> {
            ShapeMeasures shape = measurements.find(ShapeMeasures.class).orElseThrow();
            found.plates().forEach(plate -> error(plate, ledger));
            Mending mending = new Mending(FillerFacts.of(spec), lap(spec), ledger);
            found.places().forEach(mending::place);
            mending.totals(spec);
            ledger.quantity("fair.remeasure", "Places to measure again", RATIO).measured(Places.exact(
                    found.places().stream().filter(FairMeasures.Place::toMeasure).count(), "what is to be mended, and what was mended and not measured since"));
            Node area = ledger.find("carve.area").orElseGet(() -> ledger.measured("moulded surface of the plug", AREA,
                    Places.exact(shape.mouldedPlugArea(), "scaled for shrink, moulded ends counted")));
            ledger.quantity("fair.labour", "Fairing, person-time", TIME)
                    .from("moulded surface of the plug / fair rate", List.of(area, ledger.given(rate(spec))), v -> v[0] / v[1])
                    .source("rate of one person; filling, boarding and measuring");
        });
    }

    private static void error(FairMeasures.PlateError plate, Ledger ledger) {
        String id = "station." + plate.station() + ".error";
        String label = "Surface off at station " + plate.station();
        ledger.quantity(id, label, LENGTH)
                .from("lean x (z / H) n aft + height off x n up, where that is largest", List.of(ledger.given(plate.lean()), ledger.given(plate.high()),
                        ledger.measured("(z / H) n aft", RATIO, Places.exact(plate.aft(), "at that place of the moulded face")),
                        ledger.measured("n up", RATIO, Places.exact(plate.up(), "at that place of the moulded face"))),
                        v -> v[0] * v[2] + v[1] * v[3])
                .source("e = d . n with d = (lean z / H, 0, high - low), first order in small leans; + stands proud");
        ledger.quantity(id + ".girth", label + ", share of the girth", RATIO)
                .measured(Places.exact(plate.share(), "where it is largest, from bottom centre"));
    }

    @Override public void tasks(Spec spec, Measurements measurements, Ledger ledger, TaskBook tasks) {
        measurements.find(FairMeasures.class).ifPresent(found -> new FairTasks(FillerFacts.of(spec), ledger, tasks).write(found));
    }

    @Override public void orders(Spec spec, Measurements measurements, Ledger ledger, OrderBook orders) {
        ledger.find("fair.filler.volume").ifPresent(volume -> FillerFacts.of(spec).filler().ifPresent(filler -> orders.need(filler, volume)));
        spec.skin().ifPresent(skin -> ledger.find("fair.paste.resin").ifPresent(resin -> orders.need(skin.schedule().resin(), resin)));
        ledger.find("fair.paste.bubbles").ifPresent(bubbles -> orders.need("Glass bubbles", bubbles));
    }

    private static Given lap(Spec spec) {
        return spec.skin().map(Skin::lap).orElseGet(LaminateDefaults::lap);
    }

    private static Given rate(Spec spec) {
        return spec.shop().rates().flatMap(Rates::fair).orElseGet(FairDefaults::fairRate);
    }
}
