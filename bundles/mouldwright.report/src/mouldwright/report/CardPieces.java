package mouldwright.report;

import java.util.ArrayList;
import java.util.List;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.PdfPainter;
import mouldwright.report.PdfSheet.Tint;

/** Draws the pieces of a card in a style, and says how much room each takes. */
final class CardPieces {

    private static final double PAD = 8;
    private static final double LABEL = 14;

    private final PdfSheet sheet;
    private final CardStyle style;
    private final double left;
    private final double width;

    CardPieces(PdfSheet sheet, CardStyle style) {
        this.sheet = sheet;
        this.style = style;
        this.left = style.margin();
        this.width = sheet.width() - 2 * style.margin();
    }

    double high(Card.Piece piece) {
        return switch (piece) {
            case Card.Keys(List<Card.Key> keys) -> keys.isEmpty() ? 0 : keyRows(keys).size() * (keyHigh() + 6) - 6;
            case Card.Ticks(List<String> words) -> words.stream().mapToInt(each -> tickLines(each).size()).sum() * style.line() + words.size() * 4;
            case Card.Boxes(String label, int count) -> style.line() + boxRows(count) * (box() + 6);
            case Card.Blanks(List<String> labels) -> blankRows(labels).size() * (style.line() + 12);
            case Card.Rows rows -> new CardRows(sheet, style, rows).high();
            case Card.Picture(Drawing drawing) -> drawing.extent().height() * PdfPainter.POINTS * scale(drawing);
            case Card.Bars(List<Card.Bar> bars, double days) -> new CardBars(sheet, style, days).high(bars);
        };
    }

    void print(Card.Piece piece, double top) {
        switch (piece) {
            case Card.Keys(List<Card.Key> keys) -> keys(keys, top);
            case Card.Ticks(List<String> words) -> ticks(words, top);
            case Card.Boxes(String label, int count) -> boxes(label, count, top);
            case Card.Blanks(List<String> labels) -> blanks(labels, top);
            case Card.Rows rows -> new CardRows(sheet, style, rows).print(top);
            case Card.Picture(Drawing drawing) -> sheet.draw(drawing, left + (width - drawing.extent().width() * PdfPainter.POINTS * scale(drawing)) / 2, top, scale(drawing));
            case Card.Bars(List<Card.Bar> bars, double days) -> new CardBars(sheet, style, days).print(bars, top);
        }
    }

    /** Of a drawing: it is as broad as the card, and leaves room below it for the rest. */
    private double scale(Drawing drawing) {
        return Math.min(1, Math.min(width / (drawing.extent().width() * PdfPainter.POINTS), style.picture() * sheet.height() / (drawing.extent().height() * PdfPainter.POINTS)));
    }

    private double keyHigh() {
        return style.key() * 0.95 + LABEL + 3 * PAD;
    }

    private double natural(Card.Key key) {
        double unit = key.unit().isEmpty() ? 0 : sheet.width(key.unit(), style.key() * 0.45, false) + 5;
        return Math.max(sheet.width(key.value(), style.key(), true) + unit, sheet.width(key.label(), LABEL, false)) + 2 * PAD;
    }

    /** In as few rows as they fit in, about as many in each. */
    private List<List<Card.Key>> keyRows(List<Card.Key> keys) {
        for (int count = 1; count < keys.size(); count++) {
            List<List<Card.Key>> rows = shared(keys, count);
            if (rows.stream().allMatch(row -> row.stream().mapToDouble(this::natural).sum() <= width)) {
                return rows;
            }
        }
        return shared(keys, keys.size());
    }

    private static List<List<Card.Key>> shared(List<Card.Key> keys, int count) {
        List<List<Card.Key>> rows = new ArrayList<>();
        for (int n = 0; n < count; n++) {
            rows.add(keys.subList(keys.size() * n / count, keys.size() * (n + 1) / count));
        }
        return rows;
    }

    private void keys(List<Card.Key> keys, double top) {
        double y = top;
        for (List<Card.Key> row : keyRows(keys)) {
            double spare = (width - row.stream().mapToDouble(this::natural).sum()) / row.size();
            double x = left;
            for (Card.Key key : row) {
                double wide = natural(key) + spare;
                sheet.box(x, y, wide, keyHigh(), 1.5, Tint.INK);
                sheet.text(x + PAD, y + PAD + LABEL * 0.8, LABEL, false, Tint.INK, key.label());
                double foot = y + keyHigh() - PAD - style.key() * 0.05;
                sheet.text(x + PAD, foot, style.key(), true, Tint.INK, key.value());
                sheet.text(x + PAD + sheet.width(key.value(), style.key(), true) + 5, foot, style.key() * 0.45, false, Tint.INK, key.unit());
                x += wide;
            }
            y += keyHigh() + 6;
        }
    }

    private double box() {
        return style.body() * 1.5;
    }

    private List<String> tickLines(String words) {
        return sheet.lines(words, width - style.body() * 2, style.body(), false);
    }

    private void ticks(List<String> words, double top) {
        double y = top;
        for (String each : words) {
            sheet.box(left, y + style.line() * 0.12, style.body(), style.body(), 1.4, Tint.INK);
            for (String line : tickLines(each)) {
                sheet.text(left + style.body() * 1.8, y + style.body(), style.body(), false, Tint.INK, line);
                y += style.line();
            }
            y += 4;
        }
    }

    private int boxRows(int count) {
        int across = Math.max(1, (int) ((width + 8) / (box() * 1.4 + 8)));
        return (count + across - 1) / across;
    }

    private void boxes(String label, int count, double top) {
        sheet.text(left, top + style.body(), style.body(), false, Tint.INK, label);
        int across = Math.max(1, (int) ((width + 8) / (box() * 1.4 + 8)));
        for (int i = 0; i < count; i++) {
            double x = left + i % across * (box() * 1.4 + 8);
            double y = top + style.line() + i / across * (box() + 6);
            sheet.box(x, y, box() * 1.4, box(), 1.4, Tint.INK);
            sheet.text(x + 3, y + 10, 9, false, Tint.SOFT, String.valueOf(i + 1));
        }
    }

    private List<List<String>> blankRows(List<String> labels) {
        List<List<String>> rows = new ArrayList<>();
        double used = width + 1;
        for (String label : labels) {
            double wide = sheet.width(label, style.body(), false) + style.body() * 5.5;
            if (used + wide > width) {
                rows.add(new ArrayList<>());
                used = 0;
            }
            rows.getLast().add(label);
            used += wide;
        }
        return rows;
    }

    private void blanks(List<String> labels, double top) {
        double y = top;
        for (List<String> row : blankRows(labels)) {
            double each = width / row.size();
            for (int i = 0; i < row.size(); i++) {
                double x = left + i * each;
                double foot = y + style.line() + 4;
                sheet.text(x, foot, style.body(), false, Tint.INK, row.get(i));
                sheet.line(x + sheet.width(row.get(i), style.body(), false) + 6, foot + 2, x + each - 12, foot + 2, 0.9, Tint.INK);
            }
            y += style.line() + 12;
        }
    }
}
