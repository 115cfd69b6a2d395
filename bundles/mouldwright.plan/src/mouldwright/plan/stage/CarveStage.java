package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TIME;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.crown.Crown;
import mouldwright.geometry.crown.CrownPeak;
import mouldwright.geometry.crown.Crowns;
import mouldwright.plan.Hazard;
import mouldwright.plan.Measurements;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Carve;
import mouldwright.plan.spec.FairDefaults;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Rates;
import mouldwright.plan.spec.Spec;

/** Carving the foam down to the plates: the board against each bay, what it takes off or leaves and where, and the labour. */
final class CarveStage implements Stage {

    /** A board bends over as many plates at least. */
    private static final int PLATES_OF_A_FLEXIBLE_BOARD = 3;

    /** More do not find room at one plug. */
    static final int MOST_AT_WORK = 4;

    @Override public String name() {
        return "carve";
    }

    @Override public boolean wantedBy(Spec spec) {
        return spec.carve().isPresent();
    }

    @Override public void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled) {
        Guard guard = new Guard(measurements).positive(rate(spec));
        spec.fill().flatMap(fill -> fill.foam().carve()).ifPresent(guard::notNegative);
        if (guard.clear())
            measurements.find(ShapeMeasures.class).ifPresent(shape -> measurements.keep(new CarveMeasures(flexible(spec, shape, cancelled))));
    }

    /** A stiff board that serves needs no comparison, and a flexible one has been measured already. */
    private static List<Optional<Crown>> flexible(Spec spec, ShapeMeasures shape, BooleanSupplier cancelled) {
        Carve carve = spec.carve().orElseThrow();
        List<Double> lines = shape.borders().stream().map(Border::plugX).toList();
        List<Optional<Crown>> crowns = new ArrayList<>();
        for (int i = 0; i < shape.bays().size(); i++) {
            Bay bay = shape.bays().get(i);
            boolean asked = !carve.flexible() && lines.size() >= PLATES_OF_A_FLEXIBLE_BOARD
                    && shape.crowns().get(i).crown().height() > carve.crownLimit().likely();
            crowns.add(asked ? Optional.of(Crowns.flexible(shape.plug(), lines, bay.fore().plugX(), bay.aft().plugX(), shape.bare(), cancelled))
                    : Optional.empty());
        }
        return crowns;
    }

    @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) {
        measurements.find(CarveMeasures.class).ifPresent(measures -> {
            ShapeMeasures shape = measurements.find(ShapeMeasures.class).orElseThrow();
            Node area = area(shape, ledger);
            ledger.quantity("carve.labour", "Carving, person-time", TIME)
                    .from("moulded surface of the plug / carve rate", List.of(area, ledger.given(rate(spec))), v -> v[0] / v[1])
                    .source("rate of one person; sawing, carving and boarding down to the plates");
            spec.fill().ifPresent(fill -> ledger.quantity("carve.after", "Wait before foam may be carved", TIME)
                    .same(ledger.given(FoamFacts.carve(fill.foam()))).source("the foam's sheet, or common practice"));
            for (int i = 0; i < shape.bays().size(); i++)
                bay(spec, shape, measures, i, ledger);
        });
    }

    /** Moulded surface of the plug, listed as what is carved. */
    private static Node area(ShapeMeasures shape, Ledger ledger) {
        return ledger.quantity("carve.area", "Surface to carve and fair", AREA).measured(Places.exact(shape.mouldedPlugArea(),
                "moulded surface of the plug, scaled for shrink, moulded ends counted"));
    }

    private static void bay(Spec spec, ShapeMeasures shape, CarveMeasures measures, int i, Ledger ledger) {
        Carve carve = spec.carve().orElseThrow();
        Bay bay = shape.bays().get(i);
        Node length = ledger.measured("between the plates' lines", LENGTH, Places.exact(bay.aft().plugX() - bay.fore().plugX(), "on the plug"));
        ledger.quantity(bay.id("reach"), "Board over both plates, " + bay.words(), LENGTH)
                .from("board - distance of the plates", List.of(ledger.given(carve.board()), length), v -> v[0] - v[1])
                .source("a board must lie on two plates at once; what is over is shared between its ends");
        Crown crown = shape.crowns().get(i).crown();
        String board = carve.flexible() ? "a board that bends over the plates" : "a straight board";
        crown.convex().ifPresent(peak -> peak(bay, "convex", "Cut off by the board", peak, board, ledger));
        crown.hollow().ifPresent(peak -> peak(bay, "hollow", "Left high by the board", peak, board, ledger));
        measures.flexible().get(i).ifPresent(flexible -> ledger.quantity(bay.id("flexible"), "Crown under a flexible board, " + bay.words(), LENGTH)
                .measured(Places.exact(flexible.signedHeight(), "largest distance of the surface from a spline through the plates, + convex")));
    }

    private static void peak(Bay bay, String kind, String words, CrownPeak peak, String board, Ledger ledger) {
        String where = words + ", " + bay.words();
        ledger.quantity(bay.id(kind), where, LENGTH).measured(Places.exact(peak.height(),
                "largest distance of the surface from " + board + ", along the normal, + convex"));
        ledger.quantity(bay.id(kind + ".x"), where + ", aft of the datum", LENGTH).measured(Places.exact(peak.place().x(), "place of that distance, on the plug"));
        ledger.quantity(bay.id(kind + ".girth"), where + ", share of the girth", RATIO)
                .measured(Places.exact(peak.place().share(), "place of that distance, from bottom centre"));
    }

    @Override public void tasks(Spec spec, Measurements measurements, Ledger ledger, TaskBook tasks) {
        ledger.find("carve.labour").ifPresent(labour -> tasks.addNext(Task.of("carve.carve", "Carve the foam to the plates", labour).persons(MOST_AT_WORK)
                .cautions(Hazard.DUST)));
    }

    private static Given rate(Spec spec) {
        return spec.shop().rates().flatMap(Rates::carve).orElseGet(FairDefaults::carveRate);
    }
}
