package mouldwright.report;

import java.util.List;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.UnitSystem;

/** What changed as a page of its own: it needs nothing beside it, and prints. */
public final class ComparisonPage {

    private static final String STYLE = """
            :root { color-scheme: light dark }
            body { font: 16px/1.5 "DejaVu Sans", Verdana, sans-serif; max-width: 62rem; margin: 2rem auto; padding: 0 1rem; background: light-dark(#fff, #1f2123); color: light-dark(#23241f, #e8e6de) }
            h1 { font-size: 1.4rem } h2 { font-size: 1.1rem; margin-top: 2rem }
            .headline { font-size: 1.2rem; border-left: .3rem solid #4f81ad; padding-left: .8rem }
            table { border-collapse: collapse; width: 100% } caption { text-align: left; font-weight: bold; padding: .4rem 0 }
            th, td { border-bottom: 1px solid light-dark(#d8d4c8, #44474a); padding: .25rem .6rem; text-align: left } .n { text-align: right; font-variant-numeric: tabular-nums }
            code { font-size: .85em } thead { display: table-header-group }
            @media print { body { margin: 0; max-width: none; font-size: 10pt } tr { break-inside: avoid } }
            """;

    private final UnitSystem units;
    private final Display display;

    /** Prints in a system of units. */
    public ComparisonPage(UnitSystem units) {
        this.units = units;
        this.display = Display.of(units);
    }

    /** All of it. */
    public String print(Comparison comparison) {
        String plug = escaped(comparison.after().plan().plug());
        StringBuilder out = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"UTF-8\">\n<title>").append(plug).append(": what changed</title>\n<style>\n")
                .append(STYLE).append("</style>\n</head>\n<body>\n<main>\n<h1>").append(plug).append("</h1>\n<p>Revision <code>").append(escaped(comparison.before().revision()))
                .append("</code> to <code>").append(escaped(comparison.after().revision())).append("</code></p>\n");
        out.append("<p class=\"headline\">").append(escaped(comparison.isEmpty() ? "Nothing that is built differs." : new ComparisonText(units).headline(comparison))).append("</p>\n");
        stations(comparison, out);
        figures(comparison, out);
        findings("Findings that came", comparison.added(), out);
        findings("Findings that went", comparison.gone(), out);
        return out.append("</main>\n</body>\n</html>\n").toString();
    }

    private void stations(Comparison comparison, StringBuilder out) {
        if (comparison.stations().isEmpty())
            return;
        double largest = comparison.stations().stream().mapToDouble(one -> Math.max(one.before().orElse(0.0), one.after().orElse(0.0))).max().orElse(0);
        Figure figure = new Figure(display, largest, Dimension.LENGTH);
        head(out, "Stations", "station", "was at, " + figure.unit(), "is at, " + figure.unit());
        comparison.stations().forEach(one -> row(out, one.name(), one.before().map(figure::of).orElse("-"), one.after().map(figure::of).orElse("-")));
        out.append("</tbody>\n</table>\n");
    }

    private void figures(Comparison comparison, StringBuilder out) {
        List<Difference> printed = Difference.of(comparison, display);
        if (printed.isEmpty())
            return;
        head(out, "Figures", "figure", "was", "is", "change", "unit", "id");
        printed.forEach(one -> row(out, one.label(), one.before(), one.after(), one.difference(), one.unit(), one.id()));
        out.append("</tbody>\n</table>\n");
    }

    private static void findings(String title, List<TextFinding> findings, StringBuilder out) {
        if (findings.isEmpty())
            return;
        head(out, title, "code", "finding");
        findings.forEach(one -> out.append("<tr><th scope=\"row\"><code>").append(escaped(one.code())).append("</code></th><td>").append(escaped(Ink.word(one.severity()) + ": " + one.message()))
                .append("</td></tr>\n"));
        out.append("</tbody>\n</table>\n");
    }

    private static void head(StringBuilder out, String caption, String... heads) {
        out.append("<table>\n<caption>").append(caption).append("</caption>\n<thead><tr>");
        for (String head : heads)
            out.append("<th scope=\"col\">").append(escaped(head)).append("</th>");
        out.append("</tr></thead>\n<tbody>\n");
    }

    private static void row(StringBuilder out, String head, String... cells) {
        out.append("<tr><th scope=\"row\">").append(escaped(head)).append("</th>");
        for (String cell : cells)
            out.append("<td class=\"n\">").append(escaped(cell)).append("</td>");
        out.append("</tr>\n");
    }

    /** Names are the user's: nothing in them may be taken for markup. */
    private static String escaped(String text) {
        return Printable.of(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;").replace("'", "&#39;");
    }
}
