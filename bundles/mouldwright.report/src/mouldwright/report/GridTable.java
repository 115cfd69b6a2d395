package mouldwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mouldwright.plan.Quantity;
import mouldwright.units.Display;

/** The figures of all stations or all bays side by side: one row each, one column for each kind of figure, each in one unit. */
final class GridTable implements StageTable {

    private final String stage;
    private final String prefix;
    private final String head;

    /**
     * A grid.
     *
     * @param prefix of the ids it takes, such as {@code bay.}; the name follows, then a dot and the kind of figure
     * @param head   over the names
     */
    GridTable(String stage, String prefix, String head) {
        this.stage = stage;
        this.prefix = prefix;
        this.head = head;
    }

    @Override
    public String stage() {
        return stage;
    }

    @Override
    public void print(Estimate estimate, Display display, Section out) {
        Map<String, Map<String, Quantity>> byName = new LinkedHashMap<>();
        Map<String, List<Quantity>> byKind = new LinkedHashMap<>();
        for (Quantity quantity : estimate.quantities()) {
            int dot = quantity.stage().equals(stage) && quantity.id().startsWith(prefix) ? quantity.id().indexOf('.', prefix.length()) : -1;
            if (dot > 0 && !quantity.id().startsWith("lift.", dot + 1)) {
                String kind = quantity.id().substring(dot + 1);
                byName.computeIfAbsent(quantity.id().substring(prefix.length(), dot), name -> new LinkedHashMap<>()).put(kind, quantity);
                byKind.computeIfAbsent(kind, k -> new ArrayList<>()).add(quantity);
            }
        }
        byKind.values().removeIf(Nothing::isAll);
        Table table = new Table(name(), caption()).words(head);
        Map<String, Figure> figures = new LinkedHashMap<>();
        byKind.forEach((kind, all) -> {
            Figure figure = new Figure(display, largest(all), all.getFirst().dimension());
            figures.put(kind, figure);
            table.figures(words(kind), figure.unit());
        });
        byName.forEach((name, kinds) -> {
            List<Cell> row = new ArrayList<>(List.of(Cell.of(name)));
            figures.forEach((kind, figure) -> row.add(kinds.containsKey(kind) ? figure.cell(kinds.get(kind).value()) : Cell.of("-")));
            table.add(new Table.Row(row, ""));
        });
        out.table(table);
    }

    private String name() {
        return stage.equals("shape") ? plural() : stage + " " + plural();
    }

    private String caption() {
        String words = plural();
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + " side by side";
    }

    private String plural() {
        return head.equals("half") ? "halves" : head + "s";
    }

    private static double largest(List<Quantity> quantities) {
        return quantities.stream().mapToDouble(quantity -> Math.abs(quantity.value())).max().orElse(0);
    }

    private static String words(String kind) {
        return switch (kind) {
            case "bevel.max" -> "bevel";
            case "reach" -> "board over";
            case "flexible" -> "flexible board";
            case "error" -> "surface off";
            case "clear" -> "clear length";
            case "stations" -> "stations to insert";
            case "liquid" -> "liquid foam";
            default -> kind.replace('.', ' ');
        };
    }
}
