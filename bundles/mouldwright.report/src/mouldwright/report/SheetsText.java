package mouldwright.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import mouldwright.geometry.nest.Nest;
import mouldwright.geometry.nest.NestPart;
import mouldwright.geometry.nest.NestSheet;
import mouldwright.geometry.nest.Placement;
import mouldwright.geometry.plane.Outline;
import mouldwright.plan.Assumption;
import mouldwright.plan.sheets.SheetLayout;
import mouldwright.plan.spec.Given;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.UnitSystem;

/** Sheets with the parts laid on them, for reading at a terminal: what lies on each, where each part lies, and how far it is from the best that areas allow. */
public final class SheetsText {

    private final Display display;

    /** @param system family of units the figures are shown in */
    public SheetsText(UnitSystem system) {
        this.display = Display.of(system);
    }

    /** All materials of a plug.
     *  @param plug its name */
    public String print(String plug, List<SheetLayout> layouts) {
        StringBuilder out = new StringBuilder(plug).append(", parts laid on sheets\n");
        if (layouts.isEmpty()) {
            out.append("\nNothing is cut from sheets: the plug has no frame.\n");
            return out.toString();
        }
        layouts.forEach(layout -> print(layout, out));
        TextReport.heading("cautions", out);
        Paragraph.print("  ! ", "    ", Caution.DUST.words() + " Saws and routers maim: follow their maker's instructions, clamp the sheet.", out);
        Paragraph.print("  ! ", "    ", Caution.DEFERENCE, out);
        return out.toString();
    }

    private void print(SheetLayout layout, StringBuilder out) {
        Nest nest = layout.nest();
        TextReport.heading(layout.sheet().name() + " of " + length(layout.thickness()) + ", " + sizes(nest.order().sheets(), " or "), out);
        Paragraph.print("  ", "  ", nest.sheets() + (nest.sheets() == 1 ? " sheet" : " sheets") + "; " + nest.leastSheets() + " at least, from the areas of the parts. "
                + share(nest.shareUsed()) + " of what is taken becomes parts." + chosen(layout), out);
        boolean several = nest.order().sheets().size() > 1;
        Table sheets = new Table("sheets", "Sheets").figures("sheet").figures("used");
        if (several) {
            sheets.words("size");
        }
        sheets.words("parts");
        for (int sheet = 0; sheet < nest.sheets(); sheet++) {
            List<String> heads = new ArrayList<>(List.of(String.valueOf(sheet + 1), share(nest.shareUsed(sheet))));
            if (several) {
                heads.add(size(nest.taken().get(sheet)));
            }
            wrapped(sheets, heads, names(layout, nest.on(sheet).stream().map(Placement::part).toList()));
        }
        sheets.print("  ", out);
        if (nest.sheets() > 0) {
            Paragraph.print("  ", "  ", length(layout.lengthLeft()) + " of the length of sheet " + nest.sheets() + " is left whole. "
                    + kept("Cut", layout.kerf()) + "; " + kept("kept from the edges", layout.margin()) + ".", out);
        }
        if (nest.stopped()) {
            Paragraph.print("  ", "  ", "The search was stopped early: a longer one may find a better layout.", out);
        }
        tooLarge(layout, out);
        places(layout, out);
    }

    /** By what sizes were chosen, where there are several. */
    private static String chosen(SheetLayout layout) {
        if (layout.nest().order().sheets().size() == 1) {
            return "";
        }
        return layout.priced() ? " Sizes are those that cost least together, as far as was tried: " + Numbers.fixed(layout.nest().cost(), 2) + layout.sheet().stock().pack()
                .map(pack -> pack.currency().isEmpty() ? "" : " " + pack.currency()).orElse("") + "." : " Sizes are those that take least area together, as far as was tried; with a price for each the "
                + "cheapest are taken.";
    }

    private String sizes(List<NestSheet> sheets, String between) {
        return sheets.stream().map(this::size).distinct().collect(Collectors.joining(between));
    }

    private String size(NestSheet sheet) {
        return length(sheet.width()) + " by " + length(sheet.length());
    }

    /** A sheet's parts over as many lines as they need. */
    private static void wrapped(Table table, List<String> heads, List<String> names) {
        List<String> lines = new ArrayList<>();
        for (String name : names) {
            if (lines.isEmpty() || lines.getLast().length() + 2 + name.length() > Paragraph.WIDTH / 2 + Paragraph.WIDTH / 4) {
                lines.add(name);
            } else {
                lines.add(lines.removeLast() + ", " + name);
            }
        }
        for (int k = 0; k < lines.size(); k++) {
            List<String> cells = new ArrayList<>(k == 0 ? heads : Collections.nCopies(heads.size(), ""));
            cells.add(lines.get(k));
            table.row(cells);
        }
    }

    private static List<String> names(SheetLayout layout, List<NestPart> parts) {
        Map<String, Long> counts = parts.stream()
                .collect(Collectors.groupingBy(part -> layout.part(part.key()).name(), LinkedHashMap::new, Collectors.counting()));
        return counts.entrySet().stream().map(entry -> entry.getValue() == 1 ? entry.getKey() : entry.getValue() + " of " + entry.getKey()).toList();
    }

    private String kept(String words, Given given) {
        return words + " " + length(given.likely()) + (given.assumed() ? ", assumed: " + Assumption.of(given).reason() : "");
    }

    private void tooLarge(SheetLayout layout, StringBuilder out) {
        List<NestPart> parts = layout.nest().tooLarge();
        if (parts.isEmpty()) {
            return;
        }
        String sizes = parts.stream().distinct().map(part -> layout.part(part.key()).name() + " (" + length(part.outer().maxY() - part.outer().minY()) + " by "
                + length(part.outer().maxZ() - part.outer().minZ()) + ")").collect(Collectors.joining(", "));
        Paragraph.print("  ", "  ", "Not laid, since no sheet of " + sizes(layout.nest().order().sheets(), " or ")
                + " has room for it within its margin: " + sizes + ". State a larger sheet, let parts be turned freely, or cut the part in pieces and join them.", out);
    }

    private void places(SheetLayout layout, StringBuilder out) {
        List<Placement> placements = layout.nest().placements();
        Figure figure = new Figure(display, layout.nest().order().sheets().getFirst().length(), Dimension.LENGTH);
        Table table = new Table("places", "Places of the parts").words("part").figures("sheet").figures("turned", "deg").figures("from end", figure.unit()).figures("from side", figure.unit())
                .figures("takes along", figure.unit()).figures("across", figure.unit());
        for (Placement placement : placements) {
            Outline outer = placement.outer();
            table.row(List.of(layout.part(placement).name(), String.valueOf(placement.sheet() + 1), String.valueOf(placement.degrees()), figure.of(outer.minY()),
                    figure.of(outer.minZ()), figure.of(outer.maxY() - outer.minY()), figure.of(outer.maxZ() - outer.minZ())));
        }
        table.print("  ", out);
    }

    private String length(double metres) {
        return display.format(metres, Dimension.LENGTH);
    }

    private static String share(double share) {
        return Math.round(100 * share) + " %";
    }
}
