package mouldwright.plan.stage;

import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TIME;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.ledger.Figures;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Skin;
import mouldwright.process.CatalystChoice;
import mouldwright.process.Cure;
import mouldwright.process.GelTable;
import mouldwright.units.Dimension;

/** The catalyst for a wanted gel time in this shop, and the gel time it gives. A resin without a gel table goes by the
 *  general guide of catalyst by temperature, and its wanted gel time is taken at its word. */
final class ResinCure {

    static final double GUIDE_FROM = 5;
    static final double GUIDE_TO = 35;

    private final Resin resin;
    private final Given wanted;
    private final Given temperature;
    private final Optional<GelTable> table;
    private final Given least;
    private final Given most;

    ResinCure(Skin skin, Given temperature) {
        this.resin = skin.schedule().resin();
        this.wanted = skin.gel();
        this.temperature = temperature;
        this.table = resin.gel().isEmpty() ? Optional.empty() : Optional.of(new GelTable(rows(resin)));
        this.least = resin.leastCatalyst().orElseGet(() -> limit("least catalyst", true));
        this.most = resin.mostCatalyst().orElseGet(() -> limit("most catalyst", false));
    }

    private static List<GelTable.Row> rows(Resin resin) {
        return resin.gel().stream().map(row -> new GelTable.Row(row.temperature(), row.catalyst(), row.time())).toList();
    }

    /** Reports a table that cannot be read.
     *  @return whether it can */
    static boolean readable(Resin resin, Measurements measurements) {
        Guard guard = new Guard(measurements);
        for (Resin.GelRow row : resin.gel())
            guard.fraction(Given.of("catalyst in the gel table", RATIO, row.catalyst(), row.origin()))
                    .positive(Given.of("gel time", TIME, row.time(), row.origin()));
        resin.leastCatalyst().ifPresent(guard::fraction);
        resin.mostCatalyst().ifPresent(guard::fraction);
        if (!guard.clear())
            return false;
        String fault = resin.gel().isEmpty() ? "" : GelTable.fault(rows(resin));
        boolean crossed = resin.leastCatalyst().isPresent() && resin.mostCatalyst().isPresent()
                && resin.leastCatalyst().get().likely() > resin.mostCatalyst().get().likely();
        if (fault.isEmpty() && !crossed)
            return !odd(resin, measurements);
        Origin place = crossed ? resin.leastCatalyst().get().origin() : resin.gel().getFirst().origin();
        measurements.report(PlanFault.of(PlanFault.Kind.FIGURE, place, "resin " + resin.name(),
                crossed ? "the least catalyst is above the most" : fault, "correct the library entry"));
        return false;
    }

    /** Whether some row gels no faster than one with less catalyst or less warmth; the first such is reported. */
    private static boolean odd(Resin resin, Measurements measurements) {
        if (resin.gel().isEmpty())
            return false;
        List<List<GelTable.Row>> odd = new GelTable(rows(resin)).oddities();
        if (odd.isEmpty())
            return false;
        GelTable.Row slow = odd.getFirst().get(0), fast = odd.getFirst().get(1);
        Origin place = resin.gel().get(rows(resin).indexOf(fast)).origin();
        boolean warmer = fast.temperature() > slow.temperature();
        measurements.report(PlanFault.of(PlanFault.Kind.FIGURE, place, "resin " + resin.name(), "the gel table of " + resin.name() + " gels no sooner "
                + (warmer ? "at " + Figures.words(fast.temperature(), Dimension.TEMPERATURE) + " than at " + Figures.words(slow.temperature(), Dimension.TEMPERATURE)
                        : "with " + Figures.words(fast.catalyst(), RATIO) + " of catalyst than with " + Figures.words(slow.catalyst(), RATIO)),
                "correct the row: more " + (warmer ? "warmth" : "catalyst") + " gels sooner").at(fast.gelTime(), TIME).against(slow.gelTime(), TIME));
        return true;
    }

    private Given limit(String name, boolean low) {
        if (table.isEmpty())
            return Given.of(name, RATIO, low ? 0.01 : 0.04, new Origin.Assumed("no limits are stated: 1 to 4 % as the general guide has it"));
        double value = resin.gel().stream().mapToDouble(Resin.GelRow::catalyst).reduce(low ? Math::min : Math::max).orElseThrow();
        return Given.of(name, RATIO, value, new Origin.Assumed("no limits are stated: as far as the resin's gel table goes"));
    }

    /** Reports a gel time that cannot be had, or can only be guessed. */
    void report(Measurements measurements) {
        double shop = temperature.likely();
        if (table.isEmpty()) {
            if (shop < GUIDE_FROM || shop > GUIDE_TO)
                measurements.report(PlanFault.of(PlanFault.Kind.NO_CATALYST, temperature.origin(), "resin " + resin.name(),
                        "no guide gives a catalyst level at this temperature", "work between 15 and 25 degC")
                        .at(shop, temperature.dimension()));
            return;
        }
        CatalystChoice choice = choose(wanted.likely(), shop, least.likely(), most.likely());
        if (choice.outsideTable())
            measurements.report(PlanFault.of(PlanFault.Kind.GEL_OUTSIDE_TABLE, temperature.origin(), "resin " + resin.name(),
                    "the gel time lies outside the resin's table, so its nearest edge is taken",
                    "warm the shop or extend the table").at(choice.gelTime(), TIME).against(wanted.likely(), TIME));
        else if (choice.bound() != CatalystChoice.Bound.MET)
            measurements.report(PlanFault.of(PlanFault.Kind.CATALYST_CLAMPED, wanted.origin(), "resin " + resin.name(), why(choice), remedy(choice))
                    .at(choice.gelTime(), TIME).against(wanted.likely(), TIME));
    }

    private String why(CatalystChoice choice) {
        String level = Figures.words(choice.catalyst(), RATIO);
        String late = choice.gelTime() > wanted.likely() ? "gels later than wanted" : "gels sooner than wanted";
        return switch (choice.bound()) {
            case MET -> "";
            case MOST -> "even the most catalyst, " + level + ", " + late;
            case LEAST -> "even the least catalyst, " + level + ", " + late;
            case TABLE -> "the gel table ends at " + level + " of catalyst, within the resin's limits; that much " + late;
        };
    }

    private String remedy(CatalystChoice choice) {
        boolean late = choice.gelTime() > wanted.likely();
        String own = late ? "warm the shop or wait longer" : "mix smaller pots or work cooler";
        return choice.bound() == CatalystChoice.Bound.TABLE ? "extend the table from the supplier's sheet, or " + own : own;
    }

    /** Catalyst as a share of the resin's mass. */
    Node catalyst(Ledger ledger) {
        List<Node> inputs = new ArrayList<>(List.of(ledger.given(wanted), ledger.given(temperature), ledger.given(least), ledger.given(most)));
        var entry = ledger.step("catalyst", RATIO);
        if (table.isEmpty())
            return entry.from("guide at shop temperature, within the limits", inputs,
                    v -> Math.clamp(Cure.guide(Math.clamp(v[1], GUIDE_FROM, GUIDE_TO)).orElseThrow(), v[2], v[3]))
                    .source("catalyst addition chart by temperature, East Coast Fibreglass");
        inputs.addAll(tableNodes(ledger));
        return entry.from("what gels in the wanted time at shop temperature, within the limits", inputs,
                v -> choose(v[0], v[1], v[2], v[3]).catalyst()).source("ln(gel time) interpolated in temperature and ln(catalyst)");
    }

    /** Gel time.
     *  @param catalyst as {@link #catalyst} writes it */
    Node gel(Ledger ledger, Node catalyst) {
        if (table.isEmpty())
            return ledger.step("gel time", TIME).same(ledger.given(wanted)).source("no gel table is stated: taken at its word");
        List<Node> inputs = new ArrayList<>(List.of(ledger.given(temperature), catalyst));
        inputs.addAll(tableNodes(ledger));
        return ledger.step("gel time", TIME).from("gel table at shop temperature and catalyst", inputs,
                v -> table.get().gelTime(v[0], v[1]).value()).source("ln(gel time) interpolated in temperature and ln(catalyst)");
    }

    private List<Node> tableNodes(Ledger ledger) {
        return resin.gel().stream().map(row -> ledger.given(Given.of("gel time at " + row.temperature() + " degC and "
                + Math.round(row.catalyst() * 1e4) / 100.0 + " %", TIME, row.time(), row.origin()))).toList();
    }

    private CatalystChoice choose(double gel, double shop, double from, double to) {
        return CatalystChoice.of(table.orElseThrow(), gel, shop, Math.min(from, to), to);
    }
}
