package mouldwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import mouldwright.report.PdfSheet.Tint;

/** A table on the pages of a PDF: heads stand again on each page it runs on to, a row is never torn, and words that are too long run over several lines. */
final class PdfTable {

    private static final double POINTS = 7.8;
    private static final double LINE = 10.4;
    private static final double GAP = 9;
    private static final double LEAST = 34;
    /** Rows that go with the heads, so that heads never stand alone. */
    private static final int TOGETHER = 3;

    private final Table table;
    private final PdfFlow flow;
    private final PdfSheet sheet;
    private final double[] widths;

    PdfTable(Table table, PdfFlow flow) {
        this.table = table;
        this.flow = flow;
        this.sheet = flow.sheet();
        this.widths = widths();
    }

    private double[] widths() {
        int count = table.columns().size();
        double[] natural = new double[count];
        double[] least = new double[count];
        for (int c = 0; c < count; c++) {
            Table.Column column = table.columns().get(c);
            natural[c] = Math.max(sheet.width(column.head(), POINTS, true), sheet.width(column.unit(), POINTS, false));
            least[c] = Math.max(LEAST, longestWord(column.head()));
            for (Table.Row row : table.rows()) {
                natural[c] = Math.max(natural[c], sheet.width(row.cells().get(c).text(), POINTS, false));
            }
            natural[c] += 0.5;
            least[c] = column.figures() ? natural[c] : Math.min(natural[c], least[c]);
        }
        double room = flow.width() - (count - 1) * GAP;
        return DoubleStream.of(natural).sum() <= room ? natural : narrowed(natural, least, room);
    }

    private double longestWord(String words) {
        return List.of(words.split(" ")).stream().mapToDouble(word -> sheet.width(word, POINTS, true)).max().orElse(0) + 0.5;
    }

    /** Takes from the widest columns of words alone, each down to one width, until all fit. */
    private static double[] narrowed(double[] natural, double[] least, double room) {
        ToDoubleFunction<Double> total = cap -> {
            double sum = 0;
            for (int c = 0; c < natural.length; c++) {
                sum += Math.max(least[c], Math.min(natural[c], cap));
            }
            return sum;
        };
        double low = 0;
        double high = DoubleStream.of(natural).max().orElse(0);
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (total.applyAsDouble(middle) > room) {
                high = middle;
            } else {
                low = middle;
            }
        }
        double[] widths = new double[natural.length];
        for (int c = 0; c < widths.length; c++) {
            widths[c] = Math.max(least[c], Math.min(natural[c], low));
        }
        return widths;
    }

    void print() {
        boolean captioned = !table.caption().equals("Figures");
        double first = table.rows().stream().limit(TOGETHER).mapToDouble(this::height).sum();
        flow.space(10);
        flow.keep(first + (captioned ? LINE + 4 : 0) + 2 * LINE + 8);
        if (captioned) {
            double top = flow.take(LINE + 4);
            sheet.text(flow.left(), top + POINTS + 1, POINTS + 0.7, true, Tint.INK, table.caption());
        }
        heads();
        for (Table.Row row : table.rows()) {
            double high = height(row);
            if (!flow.fits(high)) {
                flow.keep(high);
                heads();
            }
            row(row, flow.take(high), high);
        }
    }

    private void heads() {
        boolean units = table.columns().stream().anyMatch(column -> !column.unit().isEmpty());
        boolean named = table.columns().stream().anyMatch(column -> !column.head().isEmpty());
        if (!named && !units) {
            return;
        }
        List<List<String>> heads = new ArrayList<>();
        int most = 1;
        for (int c = 0; c < widths.length; c++) {
            heads.add(sheet.lines(table.columns().get(c).head(), widths[c], POINTS, true));
            most = Math.max(most, heads.get(c).size());
        }
        double high = most * LINE + (units ? LINE : 0) + 3;
        double top = flow.take(high);
        double x = flow.left();
        for (int c = 0; c < widths.length; c++) {
            Table.Column column = table.columns().get(c);
            List<String> lines = heads.get(c);
            for (int i = 0; i < lines.size(); i++) {
                write(x, top + (most - lines.size() + i) * LINE + POINTS, c, true, Tint.INK, lines.get(i));
            }
            write(x, top + most * LINE + POINTS, c, false, Tint.SOFT, column.unit());
            x += widths[c] + GAP;
        }
        sheet.line(flow.left(), top + high, x - GAP, top + high, 0.9, Tint.BLUE);
    }

    private void row(Table.Row row, double top, double high) {
        double x = flow.left();
        for (int c = 0; c < widths.length; c++) {
            boolean id = table.columns().get(c).head().equals("id");
            List<String> lines = cell(row, c);
            for (int i = 0; i < lines.size(); i++) {
                write(x, top + 2 + i * LINE + POINTS, c, false, id ? Tint.SOFT : Tint.INK, lines.get(i));
            }
            x += widths[c] + GAP;
        }
        sheet.line(flow.left(), top + high, x - GAP, top + high, 0.35, Tint.LINE);
    }

    private void write(double x, double y, int column, boolean bold, Tint tint, String words) {
        if (table.columns().get(column).figures()) {
            sheet.textTo(x + widths[column], y, POINTS, bold, tint, words);
        } else {
            sheet.text(x, y, POINTS, bold, tint, words);
        }
    }

    private double height(Table.Row row) {
        int most = 1;
        for (int c = 0; c < widths.length; c++) {
            most = Math.max(most, cell(row, c).size());
        }
        return most * LINE + 3.5;
    }

    private List<String> cell(Table.Row row, int column) {
        return sheet.lines(row.cells().get(column).text(), widths[column], POINTS, false);
    }
}
