package mouldwright.plan.stage;

import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.MASS_RATE;
import static mouldwright.units.Dimension.VOLUME_RATE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Airing;
import mouldwright.plan.spec.Spec;
import mouldwright.process.Air;
import mouldwright.units.Dimension;

/** Styrene that goes into the air, session by session, and the air that would thin out the worst of them. A figure for planning: local
 *  exhaust, local codes and a licensed person decide. */
final class AirStage implements Stage {

    /** Shortest session reckoned with, s: nobody lays a ply in less. */
    private static final double SHORTEST = 60;
    private static final double LEAST_STYRENE = 1e-6;
    private static final String SOURCE = "US 40 CFR 63 subpart VVVV table 3";

    @Override public String name() {
        return "air";
    }

    @Override public boolean wantedBy(Spec spec) {
        return spec.skin().isPresent() || spec.finish().isPresent() || spec.mould().isPresent();
    }

    @Override public void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled) { }

    @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) { }

    @Override public void conclude(Spec spec, Measurements measurements, TaskBook tasks, OrderBook orders, Ledger ledger) {
        if (!clear(spec.shop().air(), measurements))
            return;
        List<Node> sessions = new ArrayList<>();
        List<Node> rates = new ArrayList<>();
        for (TaskBook.Entry entry : tasks.entries())
            if (!entry.task().releases().isEmpty()) {
                Node released = released(entry.task(), ledger);
                sessions.add(released);
                rates.add(rate(entry.task(), released, spec, ledger));
            }
        if (sessions.isEmpty())
            return;
        ledger.quantity("air.styrene", "Styrene released", MASS).sum("sum over the sessions", sessions).source(SOURCE);
        Node worst = ledger.quantity("air.release", "Styrene, rate of the worst session", MASS_RATE)
                .from("largest of the sessions' rates", rates, v -> Arrays.stream(v).max().orElse(0)).source("the worst session governs the air");
        Airing air = spec.shop().air();
        ledger.quantity("air.flow", "Air to thin it out", VOLUME_RATE)
                .from("K G / (C MW / Vm), Vm = 24.45 l/mol x (273.15 + T) / 298.15",
                        List.of(worst, ledger.given(air.limit()), ledger.given(air.mixing()), ledger.given(air.temperature())),
                        v -> Air.dilution(v[0], Air.STYRENE_MOLAR_MASS, v[1] * 1e6, Math.max(1, v[2]), v[3]))
                .source("general dilution ventilation for an even release; no stand-in for local exhaust at the work");
    }

    private static boolean clear(Airing air, Measurements measurements) {
        Guard guard = new Guard(measurements).positive(air.limit()).above(air.mixing(), Math.nextDown(1.0));
        if (air.temperature().low() > -200)
            return guard.clear();
        measurements.report(PlanFault.of(PlanFault.Kind.FIGURE, air.temperature().origin(), "air", "no shop is that cold", "correct the figure")
                .at(air.temperature().likely(), Dimension.TEMPERATURE));
        return false;
    }

    private static Node released(Task task, Ledger ledger) {
        List<Node> parts = new ArrayList<>();
        for (Task.Release release : task.releases())
            parts.add(ledger.step("styrene, " + task.name(), MASS).from(words(release.how()), List.of(release.mass(), release.styrene()),
                    v -> v[0] * Air.styrenePerMass(release.how(), Math.clamp(v[1], LEAST_STYRENE, 1 - LEAST_STYRENE))).source(SOURCE + ", kg per Mg, H in percent"));
        return ledger.quantity("air.session." + task.id() + ".styrene", "Styrene, " + task.name(), MASS).sum("sum over what is put on", parts).source(SOURCE);
    }

    private static String words(Air.Application how) {
        return switch (how) {
            case RESIN_NOT_ATOMISED -> "resin x 0.014 H^2.275 / 1000";
            case RESIN_ATOMISED -> "resin x 0.014 H^2.425 / 1000";
            case GEL_COAT -> "gel coat x 0.445 H^1.675 / 1000";
        };
    }

    /** All of it is taken to go off while the session lasts, though some goes off while it cures: the cautious way round. */
    private static Node rate(Task task, Node released, Spec spec, Ledger ledger) {
        int most = task.persons();
        return ledger.quantity("air.session." + task.id() + ".rate", "Styrene, rate of " + task.name(), MASS_RATE)
                .from("styrene x persons at it / labour", List.of(released, task.labour(), ledger.given(spec.shop().persons())),
                        v -> v[0] / Math.max(SHORTEST, v[1] / Math.clamp(v[2], 1, most)))
                .source("as if all went off while the session lasts: none is left for the cure");
    }
}
