package mouldwright.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import mouldwright.plan.Quantity;

/** The blocks of a paper as the template of a page takes them: maps, lists and texts. */
final class HtmlBlocks {

    private static final String ID = "id";

    private final Estimate estimate;
    private final Told told;
    private final Set<String> shown = new HashSet<>();
    private final Map<String, Quantity> quantities = new LinkedHashMap<>();

    /** @param told     how figures came about
     *  @param sections of the page, so that a figure links to those it rests on where the page shows them */
    HtmlBlocks(Estimate estimate, Told told, List<Section> sections) {
        this.estimate = estimate;
        this.told = told;
        sections.stream().flatMap(section -> section.tables().stream()).flatMap(table -> table.rows().stream()).map(Table.Row::id).forEach(shown::add);
        shown.remove("");
        estimate.quantities().forEach(quantity -> quantities.put(quantity.id(), quantity));
    }

    Map<String, Object> section(Section section) {
        return Map.of("name", section.name(), "heading", section.heading(), "blocks", section.blocks().stream().map(this::block).toList());
    }

    private Map<String, Object> block(Block block) {
        return switch (block) {
            case Table table -> Map.of("table", table(table));
            case Block.Steps(String title, List<String> words) -> Map.of("steps", Map.of("title", title, "words", words));
            case Block.Cautions(List<String> words) -> Map.of("cautions", words);
            case Block.Note(String words) -> Map.of("note", words);
            case Block.Lead(String words) -> Map.of("note", words);
        };
    }

    private Map<String, Object> table(Table table) {
        int range = range(table);
        List<Map<String, Object>> columns = new ArrayList<>();
        for (int c = 0; c < table.columns().size(); c++) {
            Table.Column column = table.columns().get(c);
            columns.add(Map.of("head", column.head(), "unit", column.unit(), "figures", column.figures(), "spoken", c == 0 ? "what" : "unit"));
            if (c == range) {
                columns.add(Map.of("head", "", "unit", "", "figures", false, "spoken", "range, drawn"));
            }
        }
        return Map.of("caption", table.caption(), "columns", columns, "rows", table.rows().stream().map(row -> row(table, row, range)).toList());
    }

    /** The column after which the range is drawn; -1 where no figure of the table has one. */
    private static int range(Table table) {
        List<String> heads = table.columns().stream().map(Table.Column::head).toList();
        return heads.indexOf("high");
    }

    private Map<String, Object> row(Table table, Table.Row row, int range) {
        List<Map<String, Object>> cells = new ArrayList<>();
        for (int c = 0; c < row.cells().size(); c++) {
            Table.Column column = table.columns().get(c);
            Map<String, Object> cell = new LinkedHashMap<>(Map.of("text", row.cells().get(c).text(), "figures", column.figures(), "first", c == 0));
            if (column.head().equals(ID)) {
                cell.put("id", true);
            }
            cells.add(cell);
            if (c == range) {
                cells.add(bar(Optional.ofNullable(quantities.get(row.id()))));
            }
        }
        Map<String, Object> out = new LinkedHashMap<>(Map.of("id", row.id(), "cells", cells));
        estimate.plan().derivation(row.id()).ifPresent(derivation -> out.put("how", told.of(derivation, shown)));
        return out;
    }

    /** From nothing to the high end; not drawn for what has no range, or reaches below nothing. */
    private static Map<String, Object> bar(Optional<Quantity> shown) {
        Map<String, Object> cell = new LinkedHashMap<>(Map.of("text", "", "figures", false, "first", false));
        shown.filter(quantity -> quantity.low() >= 0 && quantity.low() < quantity.high()).ifPresent(quantity -> cell.put("bar", Map.of(
                "low", percent(quantity.low(), quantity), "likely", percent(quantity.value(), quantity), "high", percent(quantity.high(), quantity))));
        return cell;
    }

    private static String percent(double value, Quantity quantity) {
        return String.valueOf(Math.round(98 * value / quantity.high()));
    }
}
