package mouldwright.report;

import java.util.ArrayList;
import java.util.List;

/** Columns of text, each as wide as its widest cell; words to the left, figures to the right. */
final class Table {

    private static final String GAP = "   ";

    private record Column(String head, String unit, boolean figures) { }

    private final List<Column> columns = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();

    Table words(String head) {
        columns.add(new Column(head, "", false));
        return this;
    }

    Table figures(String head) {
        return figures(head, "");
    }

    /** A column of figures with their unit under its head. */
    Table figures(String head, String unit) {
        columns.add(new Column(head, unit, true));
        return this;
    }

    /** Adds a row, one cell for each column. */
    void row(List<String> cells) {
        if (cells.size() != columns.size()) {
            throw new IllegalArgumentException(cells.size() + " cells in " + columns.size() + " columns");
        }
        rows.add(List.copyOf(cells));
    }

    /** Prints the table with its heads, each line indented and without spaces at its end; units under the heads; prints nothing if it has no row. */
    void print(String indent, StringBuilder out) {
        if (rows.isEmpty()) {
            return;
        }
        int[] widths = new int[columns.size()];
        for (int c = 0; c < widths.length; c++) {
            widths[c] = Math.max(columns.get(c).head().length(), columns.get(c).unit().length());
            for (List<String> row : rows) {
                widths[c] = Math.max(widths[c], row.get(c).length());
            }
        }
        heads(columns.stream().map(Column::head).toList(), widths, indent, out);
        heads(columns.stream().map(Column::unit).toList(), widths, indent, out);
        rows.forEach(row -> line(row, widths, indent, out));
    }

    private void heads(List<String> heads, int[] widths, String indent, StringBuilder out) {
        if (heads.stream().anyMatch(head -> !head.isEmpty())) {
            line(heads, widths, indent, out);
        }
    }

    private void line(List<String> cells, int[] widths, String indent, StringBuilder out) {
        StringBuilder line = new StringBuilder(indent);
        for (int c = 0; c < widths.length; c++) {
            String padding = " ".repeat(widths[c] - cells.get(c).length());
            line.append(c == 0 ? "" : GAP);
            line.append(columns.get(c).figures() ? padding + cells.get(c) : cells.get(c) + padding);
        }
        out.append(line.toString().stripTrailing()).append('\n');
    }
}
