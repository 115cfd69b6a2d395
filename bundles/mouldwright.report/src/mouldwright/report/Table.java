package mouldwright.report;

import java.util.ArrayList;
import java.util.List;

/** Columns of words, to the left, and of figures, to the right. Every paper prints it in its own way; at a terminal each column is as wide as
 *  its widest cell. */
final class Table implements Block {

    private static final String GAP = "   ";
    private static final int UNBOUNDED = Integer.MAX_VALUE;

    /** A column.
     *  @param unit   under the head; empty where the figures have none
     *  @param atMost characters a terminal has room for */
    record Column(String head, String unit, boolean figures, int atMost) { }

    /** A row.
     *  @param cells one for each column
     *  @param id    of the quantity it shows; empty where it shows none, or several */
    record Row(List<Cell> cells, String id) {
        /** Takes a copy. */
        public Row {
            cells = List.copyOf(cells);
        }
    }

    private final String name;
    private final String caption;
    private final List<Column> columns = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();

    /** A table.
     *  @param name    a word or two that no other table of the paper has
     *  @param caption over it, where a paper shows one */
    Table(String name, String caption) {
        this.name = name;
        this.caption = caption;
    }

    Table words(String head) {
        return words(head, UNBOUNDED);
    }

    /** A column of words cut short where a terminal shows them. */
    Table words(String head, int atMost) {
        columns.add(new Column(head, "", false, atMost));
        return this;
    }

    Table figures(String head) {
        return figures(head, "");
    }

    /** A column of figures with their unit under its head. */
    Table figures(String head, String unit) {
        columns.add(new Column(head, unit, true, UNBOUNDED));
        return this;
    }

    /** Adds a row of words, one cell for each column. */
    void row(List<String> cells) {
        add(new Row(cells.stream().map(Cell::of).toList(), ""));
    }

    /** Adds a row, one cell for each column. */
    void row(Cell... cells) {
        add(new Row(List.of(cells), ""));
    }

    /** Adds a row, one cell for each column. */
    void add(Row row) {
        if (row.cells().size() != columns.size()) {
            throw new IllegalArgumentException(row.cells().size() + " cells in " + columns.size() + " columns");
        }
        rows.add(row);
    }

    /** The same table with some of its rows.
     *  @param from first of them, counted from 0
     *  @param to   the first that is not among them */
    Table only(int from, int to) {
        Table some = new Table(name, caption);
        some.columns.addAll(columns);
        some.rows.addAll(rows.subList(from, to));
        return some;
    }

    String name() {
        return name;
    }

    String caption() {
        return caption;
    }

    List<Column> columns() {
        return List.copyOf(columns);
    }

    List<Row> rows() {
        return List.copyOf(rows);
    }

    /** Prints the table with its heads, each line indented and without spaces at its end; units under the heads; prints nothing if it has no row. */
    void print(String indent, StringBuilder out) {
        if (rows.isEmpty()) {
            return;
        }
        int[] widths = new int[columns.size()];
        List<List<String>> lines = rows.stream().map(this::texts).toList();
        for (int c = 0; c < widths.length; c++) {
            widths[c] = Math.max(columns.get(c).head().length(), columns.get(c).unit().length());
            for (List<String> line : lines) {
                widths[c] = Math.max(widths[c], line.get(c).length());
            }
        }
        heads(columns.stream().map(Column::head).toList(), widths, indent, out);
        heads(columns.stream().map(Column::unit).toList(), widths, indent, out);
        lines.forEach(line -> line(line, widths, indent, out));
    }

    private List<String> texts(Row row) {
        List<String> texts = new ArrayList<>();
        for (int c = 0; c < columns.size(); c++) {
            String text = row.cells().get(c).text();
            int atMost = columns.get(c).atMost();
            texts.add(text.length() <= atMost ? text : text.substring(0, atMost - 2).stripTrailing() + "..");
        }
        return texts;
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
