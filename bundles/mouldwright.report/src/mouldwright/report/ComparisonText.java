package mouldwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.UnitSystem;

/** Prints what changed as text: the few figures everybody asks for in one line, then stations, figures stage by stage, and findings. */
public final class ComparisonText {

    /** What the first line tells, in this order, with the words it uses. */
    private static final Map<String, String> HEADLINE = new LinkedHashMap<>();

    static {
        HEADLINE.put("shape.volume", "volume");
        HEADLINE.put("frame.sheets", "sheets");
        HEADLINE.put("fill.mass", "foam");
        HEADLINE.put("skin.resin.mass", "resin of the skin");
        HEADLINE.put("mass.mould", "mould");
        HEADLINE.put("plan.labour", "labour");
        HEADLINE.put("plan.elapsed", "till all is cured");
        HEADLINE.put("plan.cost", "cost");
    }

    private final Display display;

    /** Prints in a system of units. */
    public ComparisonText(UnitSystem units) {
        display = Display.of(units);
    }

    /** All of it. */
    public String print(Comparison comparison) {
        StringBuilder out = new StringBuilder();
        out.append(Printable.of(comparison.after().plan().plug())).append("   ").append(comparison.before().revision()).append(" to ").append(comparison.after().revision()).append('\n');
        if (comparison.isEmpty())
            return out.append("nothing that is built differs\n").toString();
        out.append(headline(comparison)).append('\n');
        stations(comparison, out);
        figures(comparison, out);
        findings("Findings that came", comparison.added(), out);
        findings("Findings that went", comparison.gone(), out);
        return out.toString();
    }

    /** The few figures everybody asks for, such as {@code +1.2 kg foam, +1 day}; says so where none of them differs. */
    public String headline(Comparison comparison) {
        List<String> parts = new ArrayList<>();
        HEADLINE.forEach((id, words) -> find(comparison, id).filter(d -> !d.before().equals(d.after()) && !d.difference().isEmpty())
                .ifPresent(d -> parts.add(d.words() + " " + words)));
        return parts.isEmpty() ? "no change in foam, resin, labour, days or cost" : String.join(", ", parts);
    }

    private Optional<Difference> find(Comparison comparison, String id) {
        return comparison.figures().stream().filter(change -> change.id().equals(id)).findFirst().map(change -> Difference.of(change, display));
    }

    private void stations(Comparison comparison, StringBuilder out) {
        if (comparison.stations().isEmpty())
            return;
        out.append("\nStations\n");
        double largest = comparison.stations().stream().mapToDouble(one -> Math.max(one.before().orElse(0.0), one.after().orElse(0.0))).max().orElse(0);
        Figure figure = new Figure(display, largest, Dimension.LENGTH);
        Table table = new Table("stations", "Stations").words("station").figures("was at", figure.unit()).figures("is at", figure.unit());
        comparison.stations().forEach(one -> table.row(List.of(Printable.of(one.name()), one.before().map(figure::of).orElse("-"), one.after().map(figure::of).orElse("-"))));
        table.print("  ", out);
    }

    private void figures(Comparison comparison, StringBuilder out) {
        List<Difference> printed = Difference.of(comparison, display);
        if (printed.isEmpty())
            return;
        out.append("\nFigures\n");
        Table table = new Table("changes", "Figures").words("").figures("was").figures("is").figures("change").words("").words("id");
        printed.forEach(one -> table.row(List.of(Printable.of(one.label()), one.before(), one.after(), one.difference(), one.unit(), one.id())));
        table.print("  ", out);
    }

    private static void findings(String title, List<TextFinding> findings, StringBuilder out) {
        if (findings.isEmpty())
            return;
        out.append('\n').append(title).append('\n');
        findings.forEach(one -> out.append("  ").append(Ink.word(one.severity())).append(' ').append(one.code()).append("  ").append(Printable.of(one.message())).append('\n'));
    }
}
