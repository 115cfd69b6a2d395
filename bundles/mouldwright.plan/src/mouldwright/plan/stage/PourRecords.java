package mouldwright.plan.stage;

import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TEMPERATURE;
import static mouldwright.units.Dimension.VOLUME;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.geometry.fill.Extent;
import mouldwright.geometry.measure.Measured;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.FillDefaults;
import mouldwright.plan.spec.Foam;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.Survey;
import mouldwright.process.YieldTable;

/** Pours that were weighed and measured, and the share of the foam's yield they show for the bays still to come. Records of one
 *  bay are lifts, each upon the last.
 *  @param pours in the order of the text */
public record PourRecords(List<Recorded> pours) {

    /** A pour as made.
     *  @param bay         which was poured
     *  @param mass        kg
     *  @param risen       volume it rose to, m3
     *  @param temperature of the shop that day, degC */
    public record Recorded(String bay, Given mass, Measured risen, Given temperature) { }

    /** Copies its list. */
    public PourRecords {
        pours = List.copyOf(pours);
    }

    /** @return whether a bay was poured */
    public boolean holds(Bay bay) {
        return pours.stream().anyMatch(pour -> pour.bay().equals(bay.name()));
    }

    /** Measures what risen heights hold. What cannot be is reported and left out. */
    static PourRecords measure(Spec spec, FillMeasures fill, Measurements measurements) {
        List<Recorded> recorded = new ArrayList<>();
        Map<String, Double> risenTo = new HashMap<>();
        for (Survey survey : spec.surveys()) {
            Given temperature = temperature(survey).orElse(spec.shop().temperature());
            for (Survey.Reading reading : survey.readings())
                if (reading instanceof Survey.Reading.Poured poured)
                    of(poured, temperature, fill, risenTo, measurements).ifPresent(recorded::add);
        }
        return new PourRecords(recorded);
    }

    private static Optional<Given> temperature(Survey survey) {
        return survey.readings().stream().filter(Survey.Reading.Temperature.class::isInstance).map(Survey.Reading.Temperature.class::cast)
                .reduce((first, last) -> last).map(t -> Given.of("shop temperature on " + survey.day(), TEMPERATURE, t.value(), t.origin()));
    }

    private static Optional<Recorded> of(Survey.Reading.Poured poured, Given temperature, FillMeasures fill, Map<String, Double> risenTo,
            Measurements measurements) {
        String name = poured.span().from() + "-" + poured.span().to();
        Optional<FillMeasures.BayFill> bay = fill.bays().stream().filter(b -> b.bay().name().equals(name)).findFirst();
        if (bay.isEmpty()) {
            measurements.report(PlanFault.of(PlanFault.Kind.SURVEY_OUTSIDE, poured.origin(), "poured " + name,
                    name + " is no bay that is filled, so its pour is not reckoned with", "name two neighbouring plates"));
            return Optional.empty();
        }
        Given mass = Given.of("poured into " + bay.get().bay().words(), MASS, poured.mass(), poured.origin());
        Given rise = Given.of("rise in " + bay.get().bay().words(), LENGTH, poured.rise(), poured.origin());
        if (!new Guard(measurements).positive(mass).size(rise).clear())
            return Optional.empty();
        double before = risenTo.getOrDefault(name, 0.0);
        Extent extent = bay.get().cavity().extent(FillStage.lying(bay.get().attitude()));
        if (before + poured.rise() > extent.height()) {
            measurements.report(PlanFault.of(PlanFault.Kind.SURVEY_OUTSIDE, poured.origin(), bay.get().bay().words(),
                    "the foam cannot have risen higher than the cavity of " + bay.get().bay().words() + ", so its pour is not reckoned with",
                    "correct the rise").at(before + poured.rise(), LENGTH).against(extent.height(), LENGTH));
            return Optional.empty();
        }
        risenTo.put(name, before + poured.rise());
        Measured risen = bay.get().cavity().between(FillStage.lying(bay.get().attitude()), extent.low() + before, extent.low() + before + poured.rise());
        return risen.value() > 0 ? Optional.of(new Recorded(name, mass, risen, temperature)) : Optional.empty();
    }

    /** The share of the supplier's yield that was reached, in a ledger: all risen volume x density over all mass x the table's yield that
     *  day, never above 1. */
    Node share(Foam foam, Ledger ledger) {
        List<Node> inputs = new ArrayList<>(List.of(ledger.given(foam.density()), ledger.given(FillDefaults.pourReading())));
        for (Recorded pour : pours) {
            inputs.add(ledger.given(pour.mass()));
            inputs.add(ledger.measured("volume risen to, bay " + pour.bay(), VOLUME, Places.measured(pour.risen(),
                    "cavity up to the height the foam rose to")));
            inputs.add(table(foam, pour.temperature(), ledger));
        }
        return ledger.quantity("fill.recorded", "Share of the yield reached, as poured", RATIO)
                .from("(1 + error of reading) x risen volume x density / (mass x yield in the table that day), over all records, 1 at most", inputs, v -> {
                    double risen = 0;
                    double full = 0;
                    for (int i = 2; i + 2 < v.length; i += 3) {
                        risen += v[i + 1];
                        full += v[i] * v[i + 2];
                    }
                    return Math.min(1, (1 + v[1]) * risen * v[0] / full);
                }).source("definition of free-rise density; foam is never had lighter than the supplier's figure by reading generously");
    }

    private static Node table(Foam foam, Given temperature, Ledger ledger) {
        if (foam.yield().isEmpty())
            return ledger.given(FillDefaults.fullYield());
        YieldTable table = FoamMix.table(foam);
        return ledger.step("yield in the table", RATIO).from("yield table at the temperature", List.of(ledger.given(temperature)), v -> table.at(v[0]).value())
                .source("the supplier's table, straight lines between its rows");
    }
}
