package mouldwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mouldwright.plan.Assumption;
import mouldwright.plan.Quantity;
import mouldwright.plan.draw.Spread;
import mouldwright.plan.spec.Acceptance;
import mouldwright.units.Display;
import mouldwright.units.UnitSystem;

/**
 * What stands on the papers of an estimate, whatever they are written in: stage by stage the figures with their range and the id that
 * {@code explain} takes, then the tables of the stage and its cautions; what was assumed, found and accepted.
 */
final class EstimatePaper {

    /** A likely figure so much smaller than its high, or nothing at all, is told in the unit that suits the high. */
    private static final double SMALL_AGAINST_HIGH = 100;

    private static final List<StageTable> TABLES = List.of(
            new GridTable("shape", "station.", "station"),
            new GridTable("shape", "bay.", "bay"),
            new PlateTable(),
            new MemberTable(),
            new AlignmentTable(),
            new GridTable("fill", "bay.", "bay"),
            new PourTable(),
            new PourOrderTable(),
            new GridTable("carve", "bay.", "bay"),
            new GridTable("fair", "station.", "station"),
            new RemedyTable(),
            new PotTable("skin"),
            new PieceTable("skin"),
            new GridTable("mould", "mould.piece.", "half"),
            new BoardTable(),
            new PotTable("mould"),
            new PieceTable("mould"),
            new RibTable(),
            new PotTable("mould.stiffener"),
            new PieceTable("mould.stiffener"),
            new TaskTable(),
            new OrderTable(),
            new AirTable());

    private final Estimate estimate;
    private final UnitSystem system;
    private final Display display;
    private final PathNames names;

    EstimatePaper(Estimate estimate, UnitSystem system, PathNames names) {
        this.estimate = estimate;
        this.system = system;
        this.display = Display.of(system);
        this.names = names;
    }

    /** What was drawn, in words; empty where nothing was. */
    Optional<String> draws() {
        return estimate.draws().map(draws -> draws.count() + " draws of " + draws.figures() + " uncertain figures, seed " + draws.seed()
                + ": that share of them stays at or below the figure; order what stands under 90 % to be 90 % sure.");
    }

    /** One section a stage, in the order of the build. */
    List<Section> stages() {
        return estimate.stages().stream().map(this::stage).toList();
    }

    private Section stage(String stage) {
        Section out = new Section(stage, heading(stage)).table(figures(stage));
        TABLES.stream().filter(table -> table.stage().equals(stage)).forEach(table -> table.print(estimate, display, out));
        return out.cautions(Caution.of(stage));
    }

    private static String heading(String stage) {
        return Character.toUpperCase(stage.charAt(0)) + stage.substring(1);
    }

    private Table figures(String stage) {
        List<Quantity> listed = estimate.quantities().stream()
                .filter(quantity -> quantity.stage().equals(stage) && !inTable(quantity.id()) && !Nothing.is(quantity)).toList();
        boolean ranged = listed.stream().anyMatch(EstimatePaper::ranged);
        Table table = new Table("figures " + stage, "Figures").words("").figures("likely").words("");
        if (ranged) {
            ends().forEach(table::figures);
        }
        table.words("id");
        listed.forEach(quantity -> table.add(row(quantity, ranged)));
        return table;
    }

    /** Every figure there is, those of single stations, bays and sessions too. */
    Table quantities() {
        Table table = new Table("quantities", "Quantities").words("id").words("stage").words("label").figures("likely").words("unit");
        ends().forEach(table::figures);
        for (Quantity quantity : estimate.quantities()) {
            Figure figure = figure(quantity);
            List<Cell> cells = new ArrayList<>(List.of(Cell.of(quantity.id()), Cell.of(quantity.stage()), Cell.of(quantity.label()),
                    figure.cell(quantity.value()), Cell.of(figure.unit())));
            cells.addAll(ends(quantity, figure));
            table.add(new Table.Row(cells, quantity.id()));
        }
        return table;
    }

    private List<String> ends() {
        return estimate.draws().isPresent() ? List.of("10 %", "50 %", "90 %") : List.of("low", "high");
    }

    /** Figures of one station, bay, ply or place of a survey stand in the tables. */
    private static boolean inTable(String id) {
        return id.startsWith("station.") || id.startsWith("bay.") || id.startsWith("survey.") || id.startsWith("skin.laying.")
                || id.startsWith("mould.laying.") || id.startsWith("mould.stiffener.laying.") || id.startsWith("mould.piece.") || id.startsWith("order.")
                || id.startsWith(AirTable.PREFIX);
    }

    private static boolean isLabour(String id) {
        return id.startsWith("plan.labour") || id.endsWith(".hours") || id.endsWith(".labour");
    }

    private static boolean ranged(Quantity quantity) {
        return quantity.low() < quantity.high();
    }

    /** How a quantity is shown. */
    Figure figure(Quantity quantity) {
        double size = Math.abs(quantity.value()) < quantity.high() / SMALL_AGAINST_HIGH ? quantity.high() : quantity.value();
        return !quantity.currency().isEmpty() ? Figure.money(quantity.currency())
                : isLabour(quantity.id()) ? Figure.hours(size) : new Figure(display, size, quantity.dimension());
    }

    private Table.Row row(Quantity quantity, boolean withRange) {
        Figure figure = figure(quantity);
        List<Cell> row = new ArrayList<>(List.of(Cell.of(quantity.label()), figure.cell(quantity.value()), Cell.of(figure.unit())));
        if (withRange) {
            row.addAll(ends(quantity, figure));
        }
        row.add(Cell.of(quantity.id()));
        return new Table.Row(row, quantity.id());
    }

    private List<Cell> ends(Quantity quantity, Figure figure) {
        if (estimate.draws().isPresent()) {
            Optional<Spread> spread = estimate.draws().get().spread(quantity.id()).filter(any -> ranged(quantity));
            return spread.map(any -> List.of(figure.cell(any.tenth()), figure.cell(any.half()), figure.cell(any.ninety())))
                    .orElse(List.of(Cell.NONE, Cell.NONE, Cell.NONE));
        }
        return ranged(quantity) ? List.of(figure.cell(quantity.low()), figure.cell(quantity.high())) : List.of(Cell.NONE, Cell.NONE);
    }

    /** What the plan rests on because the spec is silent. */
    Section assumed() {
        Table table = new Table("assumed", "Defaults the plan rests on").words("assumed").words("value").words("reason");
        AssumedText words = new AssumedText(system);
        for (Assumption assumption : estimate.assumed()) {
            table.row(List.of(assumption.name(), words.words(assumption), assumption.reason()));
        }
        return new Section("assumed", "Assumed, since the spec does not say").table(table);
    }

    /** What was found, and what was accepted with its reason. */
    Section findings() {
        Table found = new Table("findings", "Findings").words("code").words("weight").words("place").words("found").words("fix");
        for (TextFinding finding : estimate.findings()) {
            found.row(List.of(finding.code(), Ink.word(finding.severity()), names.of(finding.file()) + ":" + finding.line() + ":" + finding.column(),
                    finding.message(), finding.fix().orElse("")));
        }
        Table accepted = new Table("accepted", "Accepted in the spec").words("code").words("reason").words("until");
        for (Acceptance acceptance : estimate.plan().spec().accepted()) {
            accepted.row(Cell.of(acceptance.code()), Cell.of(acceptance.why()), acceptance.until().<Cell>map(Cell.Day::new).orElse(Cell.NONE));
        }
        Section section = new Section("findings", "Findings").table(found);
        return (found.rows().isEmpty() ? section.note("Nothing was found.") : section.note(summary())).table(accepted);
    }

    private String summary() {
        String words = FindingsText.summary(estimate.findings());
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }
}
