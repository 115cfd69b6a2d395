package mouldwright.report;

import java.util.ArrayList;
import java.util.List;
import mouldwright.report.PdfSheet.Tint;

/** A list on a card: a box to tick in each row, and the columns that matter in bold and larger. The first column of words takes what room is left. */
final class CardRows {

    private static final double GAP = 9;

    private final PdfSheet sheet;
    private final CardStyle style;
    private final Card.Rows rows;
    private final double[] widths;
    private final double left;
    private final int wide;

    CardRows(PdfSheet sheet, CardStyle style, Card.Rows rows) {
        this.sheet = sheet;
        this.style = style;
        this.rows = rows;
        this.left = style.margin() + style.body() * 1.8;
        List<Table.Column> columns = rows.table().columns();
        this.wide = columns.stream().map(Table.Column::figures).toList().indexOf(false);
        this.widths = new double[columns.size()];
        double sum = 0;
        for (int c = 0; c < widths.length; c++) {
            widths[c] = natural(c);
            sum += widths[c] + (c > 0 ? GAP : 0);
        }
        double room = sheet.width() - style.margin() - left;
        if (wide >= 0) {
            widths[wide] = Math.max(style.body() * 6, widths[wide] + room - sum);
        } else {
            double spare = Math.max(0, room - sum) / widths.length;
            for (int c = 0; c < widths.length; c++) {
                widths[c] += spare;
            }
        }
    }

    private boolean strong(int column) {
        return rows.strong().contains(rows.table().columns().get(column).head());
    }

    private double points(int column) {
        return strong(column) ? style.body() * 1.3 : style.body();
    }

    private double natural(int c) {
        Table.Column column = rows.table().columns().get(c);
        double widest = Math.max(sheet.width(column.head(), style.body(), false), sheet.width(column.unit(), style.body(), false));
        for (Table.Row row : rows.table().rows()) {
            widest = Math.max(widest, sheet.width(row.cells().get(c).text(), points(c), strong(c)));
        }
        return widest + 1;
    }

    private boolean units() {
        return rows.table().columns().stream().anyMatch(column -> !column.unit().isEmpty());
    }

    private double headHigh() {
        return style.line() * (units() ? 2 : 1) + 4;
    }

    private double rowHigh(Table.Row row) {
        int lines = 1;
        for (int c = 0; c < widths.length; c++) {
            lines = Math.max(lines, lines(row, c).size());
        }
        return Math.max(style.body() * 1.3, style.body()) * 1.25 + (lines - 1) * style.line() + 5;
    }

    private List<String> lines(Table.Row row, int column) {
        String text = row.cells().get(column).text();
        return column == wide ? sheet.lines(text, widths[column], points(column), strong(column)) : List.of(text);
    }

    double high() {
        return headHigh() + rows.table().rows().stream().mapToDouble(this::rowHigh).sum();
    }

    void print(double top) {
        double y = top;
        for (int line = 0; line < (units() ? 2 : 1); line++) {
            double x = left;
            for (int c = 0; c < widths.length; c++) {
                Table.Column column = rows.table().columns().get(c);
                write(x, y + style.body(), c, style.body(), false, line == 0 ? column.head() : column.unit());
                x += widths[c] + GAP;
            }
            y += style.line();
        }
        y = top + headHigh();
        sheet.line(style.margin(), y, sheet.width() - style.margin(), y, 1.5, Tint.INK);
        for (Table.Row row : new ArrayList<>(rows.table().rows())) {
            double high = rowHigh(row);
            double first = y + style.body() * 1.3;
            sheet.box(style.margin(), first - style.body(), style.body(), style.body(), 1.4, Tint.INK);
            double x = left;
            for (int c = 0; c < widths.length; c++) {
                List<String> lines = lines(row, c);
                for (int i = 0; i < lines.size(); i++) {
                    write(x, first + i * style.line(), c, points(c), strong(c), lines.get(i));
                }
                x += widths[c] + GAP;
            }
            y += high;
            sheet.line(style.margin(), y, sheet.width() - style.margin(), y, 0.6, Tint.LINE);
        }
    }

    private void write(double x, double y, int column, double points, boolean bold, String words) {
        if (rows.table().columns().get(column).figures()) {
            sheet.textTo(x + widths[column], y, points, bold, Tint.INK, words);
        } else {
            sheet.text(x, y, points, bold, Tint.INK, words);
        }
    }
}
