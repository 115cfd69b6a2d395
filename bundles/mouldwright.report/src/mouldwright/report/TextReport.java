package mouldwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.plan.Quantity;
import mouldwright.plan.draw.Spread;
import mouldwright.units.Display;
import mouldwright.units.UnitSystem;

/**
 * An estimate for reading at a terminal of a hundred columns: stage by stage the figures with their range and the id that
 * {@code explain} takes, then the tables of the stage, the cautions, what was assumed and what was found.
 */
public final class TextReport {

    /** A table that stands under the figures of one stage. A new one is one class and one line in {@link #TABLES}. */
    interface StageTable {
        /** The stage it belongs to. */
        String stage();

        /** Prints it; prints nothing where the estimate has nothing for it. */
        void print(Estimate estimate, Display display, StringBuilder out);
    }

    /** A likely figure so much smaller than its high, or nothing at all, is told in the unit that suits the high. */
    private static final double SMALL_AGAINST_HIGH = 100;

    private static final List<StageTable> TABLES = List.of(
            new GridTable("shape", "station.", "station"),
            new GridTable("shape", "bay.", "bay"),
            new PlateTable(),
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

    private final UnitSystem system;
    private final Display display;
    private final PathNames names;

    /**
     * A writer of text reports.
     *
     * @param system family of units the figures are shown in
     * @param names  how files are named in findings
     */
    public TextReport(UnitSystem system, PathNames names) {
        this.system = system;
        this.display = Display.of(system);
        this.names = names;
    }

    /** The whole text, each line ending with a line feed. */
    public String print(Estimate estimate) {
        StringBuilder out = new StringBuilder();
        head(estimate, out);
        for (String stage : estimate.stages()) {
            stage(estimate, stage, out);
        }
        new AssumedText(system).print(estimate.assumed(), out);
        findings(estimate, out);
        return out.toString();
    }

    private static void head(Estimate estimate, StringBuilder out) {
        Optional<String> title = estimate.plan().spec().title();
        out.append(estimate.plan().plug()).append(title.map(words -> "   " + Printable.of(words)).orElse("")).append('\n');
        out.append("revision ").append(estimate.revision()).append('\n');
        estimate.draws().ifPresent(draws -> Paragraph.print("", "", draws.count() + " draws of " + draws.figures() + " uncertain figures, seed " + draws.seed()
                + ": that share of them stays at or below the figure; order what stands under 90 % to be 90 % sure.", out));
    }

    private void stage(Estimate estimate, String stage, StringBuilder out) {
        heading(stage, out);
        List<Quantity> listed = estimate.quantities().stream()
                .filter(quantity -> quantity.stage().equals(stage) && !inTable(quantity.id())).toList();
        boolean ranged = listed.stream().anyMatch(TextReport::ranged);
        Table figures = new Table().words("").figures("likely").words("");
        if (ranged && estimate.draws().isPresent()) {
            figures.figures("10 %").figures("50 %").figures("90 %");
        } else if (ranged) {
            figures.figures("low").figures("high");
        }
        figures.words("id");
        listed.forEach(quantity -> figures.row(row(estimate, quantity, ranged)));
        figures.print("  ", out);
        boolean first = listed.isEmpty();
        for (StageTable table : TABLES) {
            if (table.stage().equals(stage)) {
                StringBuilder lines = new StringBuilder();
                table.print(estimate, display, lines);
                out.append(lines.isEmpty() || first ? "" : "\n").append(lines);
                first &= lines.isEmpty();
            }
        }
        cautions(Caution.of(stage), out);
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

    private List<String> row(Estimate estimate, Quantity quantity, boolean withRange) {
        double size = Math.abs(quantity.value()) < quantity.high() / SMALL_AGAINST_HIGH ? quantity.high() : quantity.value();
        Figure figure = !quantity.currency().isEmpty() ? Figure.money(quantity.currency())
                : isLabour(quantity.id()) ? Figure.hours(size) : new Figure(display, size, quantity.dimension());
        List<String> row = new ArrayList<>(List.of(quantity.label(), figure.of(quantity.value()), figure.unit()));
        if (withRange && estimate.draws().isPresent()) {
            Optional<Spread> spread = estimate.draws().get().spread(quantity.id()).filter(any -> ranged(quantity));
            row.add(spread.map(any -> figure.of(any.tenth())).orElse(""));
            row.add(spread.map(any -> figure.of(any.half())).orElse(""));
            row.add(spread.map(any -> figure.of(any.ninety())).orElse(""));
        } else if (withRange) {
            row.add(ranged(quantity) ? figure.of(quantity.low()) : "");
            row.add(ranged(quantity) ? figure.of(quantity.high()) : "");
        }
        row.add(quantity.id());
        return row;
    }

    private static void cautions(List<Caution> cautions, StringBuilder out) {
        if (!cautions.isEmpty()) {
            out.append('\n');
            cautions.forEach(caution -> Paragraph.print("  ! ", "    ", caution.words(), out));
            Paragraph.print("  ! ", "    ", Caution.DEFERENCE, out);
        }
    }

    private void findings(Estimate estimate, StringBuilder out) {
        heading("findings", out);
        FindingsText text = new FindingsText(names, Map.of(), Ink.NONE);
        estimate.findings().forEach(finding -> Paragraph.print("  ", "      ", text.headline(finding), out));
        out.append("  ").append(estimate.findings().isEmpty() ? "none" : FindingsText.summary(estimate.findings())).append('\n');
    }

    static void heading(String words, StringBuilder out) {
        String title = Character.toUpperCase(words.charAt(0)) + words.substring(1) + " ";
        out.append('\n').append(title).append("-".repeat(Paragraph.WIDTH - title.length())).append('\n');
    }
}
